// SPDX-License-Identifier: Apache-2.0
// What the scripts of this folder share: the packages, and a table for the C++ tests to read.
import { mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const modules = join(process.cwd(), "node_modules");

/** Ends the script with a sentence instead of a stack. */
export function giveUp(sentence) {
  console.error(sentence);
  process.exit(1);
}

/** The package `name` in node_modules of the folder the script was started in, and its version. */
export function outsidePackage(name) {
  try {
    const { version } = JSON.parse(readFileSync(join(modules, name, "package.json"), "utf8"));
    return { exported: createRequire(join(modules, "here.js"))(name), version };
  } catch (error) {
    return giveUp(
      `${name} cannot be loaded from ${modules}: packaging/test installs it in build/release. For another build, copy ` +
      `tests/outside/package*.json to ${process.cwd()} and run npm ci there.\n${error.message}`,
    );
  }
}

/** Writes to the path given as the script's argument: comment lines, the columns in one, then the rows. All or nothing. */
export function writeTable(comments, columns, rows) {
  const path = process.argv[2] ?? giveUp(`usage: node ${process.argv[1]} FILE.csv`);
  const lines = [...comments, columns.join(",")].map((line) => `# ${line}`);
  for (const row of rows) {
    if (row.length !== columns.length) {
      giveUp(`a row of ${row.length} cells in a table of ${columns.length} columns: ${row}`);
    }
    if (row.some((cell) => typeof cell === "number" && !Number.isFinite(cell))) {
      giveUp(`not a number: ${row}`);
    }
    lines.push(row.join(","));
  }
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(`${path}.part`, lines.join("\n") + "\n");
  renameSync(`${path}.part`, path);
  console.log(`${rows.length} rows in ${path}`);
}
