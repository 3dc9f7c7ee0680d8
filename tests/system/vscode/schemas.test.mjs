// What is completed from the schemas while no server runs.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import path from "node:path";
import { test } from "node:test";
import { caret } from "../../../lint/editor/vscode/src/caret.js";
import { offered, schemaOf } from "../../../lint/editor/vscode/src/schemas.js";

/** A text with the caret at | as lines, row and column. */
function marked(text) {
  const [before] = text.split("|");
  const lines = before.split("\n");
  return [text.replace("|", "").split("\n"), lines.length - 1, lines.at(-1).length];
}

const schema = (name) => JSON.parse(readFileSync(path.join(process.env.SCHEMAS, `${name}.json`), "utf8"));
const labels = (text, name = "programme") => offered(schema(name), ...marked(text)).map(({ label }) => label);

test("a file's own name says which schema is its", () => {
  const names = ["a.programme.yaml", "a.athlete.yml", "a.exercises.yaml", "spotline.yaml", "Untitled-1", "b.yaml"];
  assert.deepEqual(names.map(schemaOf), ["programme", "athlete", "exercises", "team", "programme", undefined]);
});

const PLACES = [
  ["go|", [], []],
  ["programme: x\n|\ngoal: y", [], ["programme", "goal"]],
  ["goal: hy|", ["goal"], []],
  ["sessions:\n  - se|", ["sessions", null], []],
  ["sessions:\n- se|", ["sessions", null], []],
  ["sessions:\n  - session: A\n    |\n    note: x\n  - day: monday", ["sessions", null], ["session", "note"]],
  ["sessions:\n  - session: A\n  - session: B\n    |", ["sessions", null], ["session"]],
  ["sessions:\n  - session: A\n    exercises:\n      - {exercise: back squat, |, rest: 3 min}", ["sessions", null, "exercises", null], ["exercise", "rest"]],
  ["sessions:\n  - session: A\n    exercises:\n      - exercise: x\n        sets: {1-2: 3, |}", ["sessions", null, "exercises", null, "sets"], ["1-2"]],
  ["focus: [legs, tr|", ["focus", null], []],
  ["a:\n  b: 1\n# c\n\n  |", ["a"], ["b"]],
  ["'a b':\n  \"c\": {d: [1, {e: |", ["a b", "c", "d", null, "e"], []],
  ["- - a: |", [null, null, "a"], []],
  ["note: don't # stop\ngoal: |", ["goal"], []],
];
for (const [text, path, siblings] of PLACES) {
  test(`the caret's place in ${JSON.stringify(text)}`, () => {
    const at = caret(...marked(text));
    assert.deepEqual(at.path, path);
    assert.deepEqual([...at.siblings].sort(), [...siblings].sort());
  });
}

test("nothing is offered in a comment or in quotes", () => {
  for (const text of ["goal: x # |", "# go|", 'goal: "|', "{a: 'b |"]) assert.equal(caret(...marked(text)), null);
});

test("keys that are not there yet are offered, with what they mean", () => {
  const found = labels("programme: x\n|");
  assert.ok(found.includes("goal") && found.includes("sessions") && !found.includes("programme"), found);
  const [goal] = offered(schema("programme"), ...marked("go|")).filter(({ label }) => label === "goal");
  assert.equal(goal.insert, "goal: ");
  assert.match(goal.detail, /hypertrophy/);
});

test("values are offered by their list, by example, and as true or false", () => {
  assert.deepEqual(labels("goal: |"), ["hypertrophy", "strength", "power", "muscular endurance", "general health"]);
  assert.ok(labels("sessions:\n  - session: A\n    day: |").includes("wednesday"));
  assert.ok(labels("sessions:\n  - session: A\n    exercises:\n      - {exercise: x, load: |}").includes("80-85 %"));
  assert.deepEqual(labels("blocks:\n  - name: A\n    deload: |"), ["4", "4,8", "true", "false"]);
  assert.ok(labels("athlete: {level: |}").includes("novice"));
});

test("what stands in a line decides between a session and an activity", () => {
  const at = (key) => labels(`sessions:\n  - ${key}: x\n    |`);
  assert.ok(labels("sessions:\n  - |").includes("activity") && labels("sessions:\n  - |").includes("session"));
  assert.ok(at("session").includes("exercises") && !at("session").includes("effort"));
  assert.ok(at("activity").includes("effort") && !at("activity").includes("exercises"));
});

test("a key of several words is replaced from its first", () => {
  const text = "sessions:\n  - session: A\n    exercises:\n      - {exercise: x, warm-up s|}";
  const [lines, row, column] = marked(text);
  const one = offered(schema("programme"), lines, row, column).find(({ label }) => label === "warm-up sets");
  assert.equal(lines[row].slice(one.start, column), "warm-up s");
});

test("every schema is read, whatever line of it the caret is in", () => {
  assert.ok(labels("|", "athlete").includes("best lifts"));
  assert.ok(labels("|", "exercises").length > 0);
  assert.ok(labels("|", "team").includes("weekly limits"));
  assert.deepEqual(labels("no such key:\n  |"), []);
});
