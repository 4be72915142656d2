// The app's texts: both languages say everything the screens ask for, with the same gaps, and
// nothing that no screen asks for.

import assert from "node:assert/strict";
import { readFile, readdir } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { join } from "node:path";
import { test } from "node:test";
import { EVENING, Person } from "./cook.mjs";
import { openApp, siteAndPhone } from "./harness.mjs";
import { show } from "./look.mjs";

const APP = fileURLToPath(new URL("../../src/app/", import.meta.url));

/** The texts of a language: name to the gaps it has. */
async function texts(language) {
  const file = await readFile(join(APP, `words/${language}.ftl`), "utf8");
  const messages = file.split(/^(?=[a-z0-9-]+ = )/m).filter((part) => /^[a-z0-9-]+ = /.test(part));
  return new Map(
    messages.map((message) => {
      const name = /^[a-z0-9-]+/.exec(message)[0];
      const gaps = new Set([...message.matchAll(/\{ \$([a-z]+)/g)].map(([, gap]) => gap));
      return [name, [...gaps].sort()];
    }),
  );
}

/** Every text the program asks for: name to the gaps it fills. */
async function asked() {
  const files = (await readdir(APP, { recursive: true })).filter((file) => file.endsWith(".rs"));
  const found = new Map();
  for (const file of files) {
    const source = await readFile(join(APP, file), "utf8");
    for (const call of source.split(/say!\(|wording\(/).slice(1)) {
      const name = /^\s*"([a-z0-9-]+)"/.exec(call)?.[1];
      if (!name) continue;
      const gaps = [...call.matchAll(/(\w+) = /g)].map(([, gap]) => gap);
      found.set(name, new Set([...(found.get(name) ?? []), ...gaps]));
    }
  }
  return found;
}

test("both languages have the same texts with the same gaps", async () => {
  assert.deepEqual(await texts("es"), await texts("en"));
});

test("every text the screens ask for is there, and no other", async () => {
  const there = await texts("en");
  const wanted = await asked();
  assert.deepEqual([...wanted.keys()].sort(), [...there.keys()].sort());
  for (const [name, gaps] of there) {
    for (const gap of gaps) assert.ok(wanted.get(name).has(gap), `${name} lacks ${gap}`);
  }
});

// What the model says of a mistake is English, for whoever uses it as a library.
test("no mistake is told on a screen in the model's own words", async () => {
  const files = (await readdir(APP, { recursive: true })).filter((file) => /^(?!device).*\.rs$/.test(file));
  for (const file of files) {
    const source = await readFile(join(APP, file), "utf8");
    assert.doesNotMatch(source, /\b(problem|error|mistake|refused)\.to_string\(\)|\{(problem|error)\}/, file);
  }
});

test("in Spanish the screens, the numbers and the plurals are Spanish", async (t) => {
  const { site, phone } = await siteAndPhone(t, { time: EVENING, context: { locale: "es-ES" } });
  const person = new Person(phone);
  await openApp(phone, site);
  assert.equal(await phone.page.locator("html").getAttribute("lang"), "es");
  await person.tap("Nuevo ahumado");
  await phone.page.getByLabel("Peso de cada una").fill("230,6");
  await phone.page.getByLabel("Parte más gruesa").fill("38");
  await person.tap("Agregar 1 pieza");
  await phone.page.getByText("231 g, 38 mm de grueso", { exact: true }).waitFor();
  await person.tap("Una más");
  await person.button("Agregar 2 piezas").waitFor();
});

// Spanish of Mexico and of the United States has a decimal point, that of Spain a comma (Unicode CLDR);
// an hour has its article: "a la 1:15", "a las 6:45" (the grammar of the Real Academia, from memory).
for (const locale of ["es-MX", "es-US"]) {
  test(`a phone set to ${locale} reads a decimal point, and articles where Spanish has them`, async (t) => {
    const { site, phone } = await siteAndPhone(t, { time: EVENING, context: { locale } });
    const person = new Person(phone);
    await openApp(phone, site);
    await person.tap("Nuevo ahumado");
    await phone.page.getByLabel("Peso de cada una").fill("230.6");
    await person.tap("Agregar 1 pieza");
    await person.button("Quitar la pieza 1").waitFor();
    await phone.page.locator("#dinner").fill("18:45");
    await phone.page.locator("#dinner").blur();
    await person.stored(/^Cena a las 6:45/);
    await phone.page.getByText("Mañana", { exact: true }).tap();
    await phone.page.locator("#dinner").fill("13:15");
    await phone.page.locator("#dinner").blur();
    await person.stored(/^Cena a la 1:15/);
    await show(phone.page, "pit");
    assert.equal(await person.button("Punto decimal").innerText(), ".");
  });
}
