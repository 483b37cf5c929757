import { readQuantity } from "@headfall/hydraulics";

/** What a jug and a watch come to [m³/s], or what is wrong with what was typed. */
export type JugReading =
  | { readonly ok: true; readonly flow: number }
  | { readonly ok: false; readonly wrong: "volume" | "time"; readonly because: string };

/**
 * @param typed.volume  caught, "250 mL"
 * @param typed.time    in how long, "1 min"
 */
export function readJug({ volume, time }: { readonly volume: string; readonly time: string }): JugReading {
  const caught = readQuantity(volume, "volume");
  if (!caught.ok) return { ok: false, wrong: "volume", because: `${caught.allowed} ${caught.mend}` };
  if (caught.quantity.si < 0)
    return { ok: false, wrong: "volume", because: 'Not below 0: write "0 mL" where nothing came.' };
  const lasted = readQuantity(time, "time");
  if (!lasted.ok) return { ok: false, wrong: "time", because: `${lasted.allowed} ${lasted.mend}` };
  if (lasted.quantity.si <= 0)
    return { ok: false, wrong: "time", because: 'A time above 0, for instance "1 min".' };
  return { ok: true, flow: caught.quantity.si / lasted.quantity.si };
}
