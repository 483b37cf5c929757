import { existsSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readArguments } from "../../packages/hydraulics/src/command/arguments.js";
import { optionsOf } from "../../packages/hydraulics/src/command/command-options.js";
import { writeHelp, writeHelpOf } from "../../packages/hydraulics/src/command/help.js";
import {
  COMMAND_GROUPS,
  COMMANDS,
  type CommandName,
} from "../../packages/hydraulics/src/command/help-commands.js";
import { OPTIONS, OWN_WORDS } from "../../packages/hydraulics/src/command/help-options.js";
import { QUESTIONS } from "../../packages/hydraulics/src/command/questions.js";

const NAMES = Object.keys(COMMANDS) as CommandName[];
const optionNames = async (name: CommandName) => {
  const { options, flags } = await optionsOf(name);
  return [...options, ...flags];
};

describe.each(NAMES)("headfall help %s", (name) => {
  test("has words for each of its options, and a line a shell takes", async () => {
    const help = await writeHelpOf(name);
    for (const option of await optionNames(name))
      expect(help).toMatch(new RegExp(`^  --${option}( |$)`, "m"));
    expect(help.split("\n").filter((line) => line.length > 110 && !line.startsWith("Exit"))).toEqual([]);
  });

  test("its example has options that it takes, and its page is there", async () => {
    const { options, flags } = await optionsOf(name);
    const words = COMMANDS[name].example.match(/"[^"]*"|[^\s>]+/g)?.map((word) => word.replaceAll('"', ""));
    const [program, command, ...rest] = words ?? [];
    expect([program, command]).toEqual(["headfall", name]);
    expect(
      readArguments(
        rest.filter((word) => !word.endsWith(".html")),
        [...options, "day"],
        flags,
        9,
      ),
    ).not.toHaveProperty("fault");
    expect(existsSync(`docs/${COMMANDS[name].page}`)).toBe(true);
  });
});

test("every command is told of once, and no words are of an option that none has", async () => {
  expect(Object.values(COMMAND_GROUPS).flat().sort()).toEqual([...NAMES].sort());
  expect([...Object.keys(QUESTIONS), "compare", "batch"].sort()).toEqual([...NAMES].sort());
  for (const name of NAMES) expect(writeHelp()).toContain(COMMANDS[name].what.split(",")[0]);
  const had = new Set((await Promise.all(NAMES.map(optionNames))).flat());
  expect(Object.keys(OPTIONS).filter((option) => option !== "day" && !had.has(option))).toEqual([]);
  for (const [name, words] of Object.entries(OWN_WORDS))
    expect(await optionNames(name as CommandName)).toEqual(expect.arrayContaining(Object.keys(words)));
});
