// What a printed page is, read from the bytes of its PDF.

import { inflateSync } from "node:zlib";

/** The size of each page in millimetres, from its MediaBox (ISO 32000-1, 7.7.3.3: points of 1/72 inch). */
export function pageSizes(pdf) {
  const boxes = pdf.toString("latin1").matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g);
  return [...boxes].map(([, width, height]) => [width, height].map((points) => (points / 72) * 25.4));
}

/** How many runs of text stand on all pages: each begins with the operator BT (ISO 32000-1, 9.4). */
export function textRuns(pdf) {
  let count = 0;
  const text = pdf.toString("latin1");
  for (const start of text.matchAll(/stream\r?\n/g)) {
    const from = start.index + start[0].length;
    const to = text.indexOf("endstream", from);
    try {
      const content = inflateSync(pdf.subarray(from, to)).toString("latin1");
      count += content.match(/(?<![\w/])BT(?!\w)/g)?.length ?? 0;
    } catch {
      // A stream that is not deflated is a font's or a picture's.
    }
  }
  return count;
}
