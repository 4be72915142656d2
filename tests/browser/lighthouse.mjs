// Has Lighthouse, which judges pages for a browser's makers, look at every screen, mid-cook with twenty
// pieces and three bags, and writes its marks into lighthouse.md:
//
//     node lighthouse.mjs
//
// npx fetches Lighthouse for this alone: it weighs more than all else that the tests install.

import { execFile } from "node:child_process";
import { writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { promisify } from "node:util";
import { aside } from "./aside.mjs";
import { Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";
import { COOK, threeBags } from "./mid-cook.mjs";
import { openTwenty } from "./twenty.mjs";

const LIGHTHOUSE = "lighthouse@12.8.2";
const KINDS = ["accessibility", "best-practices"];
const PORT = 9333;
const TABLE = fileURLToPath(new URL("lighthouse.md", import.meta.url));

const rows = [];
await aside(async (t) => {
  const { site, phone } = await siteAndPhone(t, { switches: [`--remote-debugging-port=${PORT}`] });
  const person = new Person(phone);
  await openApp(phone, site);
  const kitchen = await threeBags(person);
  await openTwenty(phone);
  for (const screen of [...COOK, ...kitchen]) {
    const { categories, audits } = await judged(`${site.url}#${screen}`);
    const wrong = KINDS.flatMap((kind) => missed(categories[kind], audits));
    const marks = KINDS.map((kind) => Math.round(categories[kind].score * 100));
    rows.push(`| ${screen.replace(/\W.*/, "")} | ${marks.join(" | ")} | ${wrong.join("; ")} |`);
  }
});
const table = `# Lighthouse

Written by \`node lighthouse.mjs\` in \`tests/browser\`: ${LIGHTHOUSE}, twenty pieces on the pit, three bags.

| screen | accessibility | best practice | what cost marks |
| --- | --- | --- | --- |
${rows.join("\n")}
`;
await writeFile(TABLE, table);
console.log(table);

/** Lighthouse's report on the page at this address, with what the phone has stored. */
async function judged(address) {
  const options = [`--port=${PORT}`, "--disable-storage-reset", "--output=json", "--quiet", `--only-categories=${KINDS}`];
  const { stdout } = await promisify(execFile)("npx", ["--yes", LIGHTHOUSE, address, ...options], { maxBuffer: 2 ** 28 });
  const report = JSON.parse(stdout);
  if (report.runtimeError) throw new Error(report.runtimeError.message);
  return report;
}

function missed(category, audits) {
  const lost = ({ id, weight }) => weight > 0 && audits[id].score !== null && audits[id].score < 1;
  return category.auditRefs.filter(lost).map(({ id }) => audits[id].title);
}
