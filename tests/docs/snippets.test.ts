import { spawnSync } from "node:child_process";
import { rmSync, writeFileSync } from "node:fs";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { buildCommand, headfall } from "../command/run-headfall.js";
import { type Fence, findFences, listDocuments, readDocument, TOP } from "./documents.js";

const IN_DOCUMENTS = /^(README\.md$|docs\/(tutorial\.md$|how-to\/|method\/))/;

/** A block that can be run, and the block right below it that shows what it prints. */
interface Snippet {
  readonly title: string;
  readonly fence: Fence;
  readonly printed: string | undefined;
}

const snippets = listDocuments()
  .filter((file) => IN_DOCUMENTS.test(file))
  .flatMap((file) => {
    const fences = findFences(readDocument(file));
    return fences.map((fence, i): Snippet => {
      const next = fences[i + 1];
      const isPrinted = next?.followsFence === true && next.language === "text" && next.made === undefined;
      return { title: `${file}:${fence.line}`, fence, printed: isPrinted ? next.text : undefined };
    });
  });
const commands = snippets.filter(
  ({ fence }) => fence.language === "sh" && /(^|\|\s+)npx headfall /.test(fence.text),
);
const programs = snippets.filter(({ fence }) => fence.language === "ts" || fence.language === "js");

/** What is printed, as lines without the blanks at their ends; a line `...` of the document stands for any lines. */
function expectPrinted(printed: string, document: string): void {
  const trim = (text: string) => text.split("\n").map((line) => line.trimEnd());
  const whole = trim(printed.trimEnd());
  const parts = `\n${trim(document).join("\n")}\n`.split("\n...\n");
  let from = 0;
  const text = `\n${whole.join("\n")}\n`;
  parts.forEach((part, i) => {
    const piece =
      part === "" ? "\n" : `${part.startsWith("\n") ? "" : "\n"}${part}${part.endsWith("\n") ? "" : "\n"}`;
    const at = text.indexOf(piece, from);
    if (at < 0 || (i === 0 && at > 0)) expect(text, "is printed").toContain(piece);
    from = at + piece.length - 1;
  });
  if (parts.at(-1) !== "") expect(text.slice(from).trim(), "is printed after the last line shown").toBe("");
}

/** A command whose words are plain or in quotation marks, with the filter before it that writes its plan. */
const PLAIN = /^(?:(sed [^<>`$]*) \| )?npx headfall((?: +(?:[\w./:,%=-]+|"[\w ./:,%=-]*"))+)( \|\| true)?$/;
/** A command with its plan below it. */
const WITH_PLAN_BELOW = /^(npx headfall [^\n]*?) *<<'plan'\n([\s\S]*\n)plan\s*$/;

/** Plain commands, one a line, are run at once; all else is left to a shell, where each of them begins anew. */
function runLines(text: string) {
  const [, line, plan] = WITH_PLAN_BELOW.exec(text) ?? [];
  const lines = line === undefined ? linesOf(text) : [line];
  if (!lines.every((one) => PLAIN.test(one))) return runInShell(text);
  const told = lines.map((one) => tell(one, plan));
  return {
    status: told.at(-1)?.status,
    stdout: told.map(({ stdout }) => stdout).join(""),
    stderr: told.map(({ stderr }) => stderr).join(""),
  };
}

const linesOf = (text: string) =>
  text
    .replace(/\\\n\s*/g, " ")
    .replace(/\|\s*\n\s*/g, "| ")
    .split("\n")
    .map((line) => line.replace(/\s+#.*/, "").trim())
    .filter((line) => line !== "" && !line.startsWith("#"));

/** Some commands stand in several documents; each is run once. */
const toldBefore = new Map<string, ReturnType<typeof headfall>>();

function tell(line: string, plan = ""): ReturnType<typeof headfall> {
  const key = `${line}\n${plan}`;
  const told = toldBefore.get(key) ?? runPlain(line, plan);
  toldBefore.set(key, told);
  return told;
}

function runPlain(line: string, plan: string): ReturnType<typeof headfall> {
  const [, filter, words = "", whatever] = PLAIN.exec(line) ?? [];
  const filtered = filter === undefined ? undefined : runInShell(filter);
  if (filtered !== undefined && filtered.status !== 0) return filtered;
  const split = words.match(/"[^"]*"|[^\s"]+/g)!.map((word) => word.replaceAll('"', ""));
  const told = headfall(split, filtered?.stdout ?? plan);
  return whatever === undefined ? told : { ...told, status: 0 };
}

function runInShell(text: string) {
  const bin = `npx() { shift; "${process.execPath}" packages/hydraulics/bin/headfall.mjs "$@"; }`;
  return spawnSync("sh", ["-c", `${bin}\n${text}`], {
    cwd: TOP,
    encoding: "utf8",
    env: { ...process.env, NO_COLOR: "1", FORCE_COLOR: undefined },
  });
}

describe("commands in the documents", () => {
  beforeAll(() => buildCommand(), 120_000);

  it("are found", () => {
    expect(commands.length).toBeGreaterThan(5);
    expect(commands.filter(({ printed }) => printed !== undefined).length).toBeGreaterThan(4);
  });

  it.each(commands)("$title runs, and prints what stands below it", ({ fence, printed }) => {
    const { status, stdout, stderr } = runLines(fence.text);
    expect(stderr).toBe("");
    expect([0, 1]).toContain(status);
    if (printed !== undefined) expectPrinted(stdout, printed);
  });
});

describe("code in the documents", () => {
  const file = (index: number) => `${TOP}tests/docs/snippet-${process.pid}-${index}.ts`;
  afterAll(() => {
    programs.forEach((_, i) => {
      rmSync(file(i), { force: true });
    });
  });

  it("is found", () => {
    expect(programs.length).toBeGreaterThan(0);
  });

  it.each(programs.map((program, index) => ({ ...program, index })))(
    "$title runs, and prints what stands below it",
    async ({ fence, printed, index }) => {
      const lines: string[] = [];
      const log = vi.spyOn(console, "log").mockImplementation((...words: unknown[]) => {
        lines.push(words.map(String).join(" "));
      });
      writeFileSync(file(index), `${fence.text}\nexport {};\n`);
      try {
        await import(/* @vite-ignore */ file(index));
      } finally {
        log.mockRestore();
      }
      if (printed !== undefined) expectPrinted(lines.join("\n"), printed);
    },
  );
});
