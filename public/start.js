// Starts the program. Trunk would write this into the page; a file of its own lets the page forbid
// inline scripts. Trunk names the two files it built in this script's own element (see Trunk.toml).
const { js, wasm } = document.querySelector("script[data-wasm]").dataset;

try {
  const program = await import(js);
  await program.default({ module_or_path: wasm });
} catch (error) {
  console.error(error);
  const text = document.getElementById("loading");
  if (text) {
    text.textContent =
      "Pull Order could not start. It needs a browser of 2023 or later; close this page and open it again.";
  }
}
