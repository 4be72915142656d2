// The second thread of the program: it answers what takes long to work out. The page's first message
// hands it the program, already compiled, and the address of the script that starts it; each one after
// that is a question. Null says that it can go on no more, and the page then starts another.

let program;

self.addEventListener("message", async ({ data }) => {
  try {
    if (program === undefined) {
      program = start(data);
      await program;
      return;
    }
    const answer = (await program).think(data);
    self.postMessage(answer, [answer.buffer]);
  } catch (reason) {
    console.error(reason);
    self.postMessage(null);
  }
});

async function start([compiled, address]) {
  const loaded = await import(address);
  await loaded.default({ module_or_path: compiled });
  return loaded;
}
