import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { createServer } from "node:net";
import { fileURLToPath } from "node:url";
import { afterEach, expect, inject, test } from "vitest";

const serveScript = fileURLToPath(new URL("../../../packages/ui/serve.mjs", import.meta.url));
const started: ChildProcess[] = [];

afterEach(() => {
  for (const child of started.splice(0)) child.kill("SIGKILL");
});

/** Starts the server as `npm start` does; resolves with the first thing it prints. */
async function startServing(environment: Record<string, string>, folder = inject("pageFolder")) {
  const child = spawn(process.execPath, [serveScript, folder], {
    env: { ...process.env, PORT: "", ...environment },
    stdio: ["ignore", "pipe", "pipe"],
  });
  started.push(child);
  const exited = once(child, "exit") as Promise<[number | null, string | null]>;
  let printed = "";
  let complained = "";
  child.stdout.on("data", (chunk) => (printed += chunk));
  child.stderr.on("data", (chunk) => (complained += chunk));
  await Promise.race([once(child.stdout, "data"), exited]);
  return { child, exited, printed: () => printed, complained: () => complained };
}

/** Takes a port, as another program would, while `use` runs. */
async function withTakenPort(use: (port: number) => Promise<void>, wanted = 0): Promise<void> {
  const other = createServer().listen(wanted, "127.0.0.1");
  await Promise.race([once(other, "listening"), once(other, "error")]);
  const address = other.address();
  try {
    await use(typeof address === "object" && address !== null ? address.port : wanted);
  } finally {
    other.close();
  }
}

test("serve prints one line with the address, answers there, and ends with 0 on Ctrl-C", async () => {
  const { child, exited, printed } = await startServing({ PORT: "0" });
  const lines = printed().trimEnd().split("\n");
  expect(lines).toHaveLength(1);
  const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(lines[0] ?? "")?.[0];
  expect(address).toBeDefined();
  expect(await (await fetch(address ?? "")).text()).toContain("Headfall");
  child.kill("SIGINT");
  expect(await exited).toEqual([0, null]);
});

test("serve takes another port when 4173 is taken", async () => {
  await withTakenPort(async (port) => {
    expect(port).toBe(4173);
    const { printed } = await startServing({});
    const served = Number(/127\.0\.0\.1:(\d+)/.exec(printed())?.[1]);
    expect(served).toBeGreaterThan(4173);
  }, 4173);
});

test("serve says so, and does not move elsewhere, when the port asked for by PORT is taken", async () => {
  await withTakenPort(async (port) => {
    const { exited, complained, printed } = await startServing({ PORT: String(port) });
    expect((await exited)[0]).toBe(1);
    expect(complained()).toContain(String(port));
    expect(printed()).toBe("");
  });
});

test("serve refuses a PORT that is no port, and says how to write one", async () => {
  const { exited, complained } = await startServing({ PORT: "high" });
  expect((await exited)[0]).toBe(1);
  expect(complained()).toBe(
    'PORT is "high". It is a whole number from 0 to 65535; write for instance PORT=8080.\n',
  );
});

test("serve says how to build the page when there is none", async () => {
  const { exited, complained } = await startServing({}, "no-such-folder");
  expect((await exited)[0]).toBe(1);
  expect(complained()).toMatch(/no built page .*npm run build/);
});
