// What Enter puts on the next line, by the rules alone; the test that drives the editor presses the key.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import path from "node:path";
import { test } from "node:test";
import { isEmptyItem, leftList, listKeys, newLineRules } from "../../../lint/editor/vscode/src/newlines.js";

const schemas = ["programme", "athlete", "exercises", "team"].map((name) =>
  JSON.parse(readFileSync(path.join(process.env.SCHEMAS, `${name}.json`), "utf8")),
);
const rules = newLineRules(listKeys(schemas));

/** The line that Enter begins below another one, the caret where the bar stands or at the end; null: left to the editor. */
function below(line) {
  const [before, after = ""] = line.split("|");
  const rule = rules.find((one) => one.before.test(before) && one.after.test(after));
  return rule ? /^\s*/.exec(line)[0] + rule.begin : null;
}

test("lists begin with their dash, where the schemas say that a list stands", () => {
  for (const key of ["sessions", "exercises", "blocks", "superset", "waivers", "athletes", "protect"])
    assert.ok(listKeys(schemas).includes(key), key);
  assert.ok(!listKeys(schemas).includes("sets"));
  assert.equal(below("sessions:"), "  - ");
  assert.equal(below("    exercises:   # four of them"), "      - ");
  assert.equal(below("      - superset:"), "          - ");
});

test("keys go on below the first key of an item, not below its dash", () => {
  assert.equal(below("  - session: Lower A"), "    ");
  assert.equal(below("      - exercise: back squat"), "        ");
  assert.equal(below("  - &x session: A"), "    ");
});

test("a key without a value has its keys one step further in", () => {
  assert.equal(below("athlete:"), "  ");
  assert.equal(below("      - circuit:"), "          ");
  assert.equal(below("  best lifts:  # tested"), "    ");
  assert.equal(below("note: |"), "  ");
  assert.equal(below('"best lifts":'), "  ");
});

test("a line of a list is followed by the next one", () => {
  assert.equal(below("      - {exercise: back squat, sets: 3, reps: 5}"), "      - ");
  assert.equal(below("      - {exercise: back squat, sets: {1-2: 3, 3: 2}}  # heavy"), "      - ");
  assert.equal(below("      - *trunk"), "      - ");
  assert.equal(below("  - dumbbell"), "  - ");
});

test("within brackets, after values and in comments the editor's own way stays", () => {
  assert.equal(below("      - {exercise: back squat,| sets: 3}"), null);
  assert.equal(below("      - {exercise: back squat,"), null);
  assert.equal(below("    day: monday"), null);
  assert.equal(below("# a comment: with a colon"), null);
  assert.equal(below("programme: Base"), null);
  assert.equal(below("  - session: Low|er"), null);
});

test("an item with nothing in it becomes one of the list around it", () => {
  const lines = ["programme: A", "sessions:", "  - session: L", "    exercises:", "      - {exercise: plank}", "      - "];
  assert.ok(isEmptyItem(lines[5]));
  assert.ok(!isEmptyItem("      - x"));
  assert.equal(leftList(lines, 5), "  - ");
  lines[5] = "  - ";
  assert.equal(leftList(lines, 5), "");
  assert.equal(leftList(["equipment:", "  - dumbbell", "  - "], 2), "");
  const superset = ["sessions:", "  - session: L", "    exercises:", "      - superset:", "          - {exercise: a}", "          - "];
  assert.equal(leftList(superset, 5), "      - ");
});
