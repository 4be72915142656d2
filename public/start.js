// Starts the program. Trunk would write this into the page; a file of its own lets the page forbid
// inline scripts. Trunk names the two files it built in this script's own element (see Trunk.toml).

// Whether another version took over since the page was fetched.
let tookOver = false;
navigator.serviceWorker?.addEventListener("controllerchange", () => (tookOver = true));

const { js, wasm } = document.querySelector("script[data-wasm]").dataset;

try {
  fetchTextsEarly();
  const program = await import(js);
  await program.default({ module_or_path: wasm });
  await program.run();
} catch (error) {
  console.error(error);
  say("Pull Order could not start. Looking for another version…");
  await letNewerVersionIn().catch(console.error);
  say(
    "Pull Order could not start. What you entered is still stored. " +
      "It needs a browser of 2023 or later; close this page and open it again.",
  );
}

// The program needs them next, and most likely the same as last time.
function fetchTextsEarly() {
  const texts = keptName();
  if (!texts?.endsWith(".ftl")) return;
  const link = document.createElement("link");
  Object.assign(link, { rel: "preload", as: "fetch", crossOrigin: "anonymous", href: texts });
  document.head.append(link);
}

// What the program kept; a browser may refuse to keep anything, or to be asked.
function keptName() {
  try {
    return localStorage.getItem("texts");
  } catch {
    return undefined;
  }
}

function say(words) {
  const text = document.getElementById("loading") ?? document.createElement("p");
  text.id = "loading";
  text.textContent = words;
  document.body.prepend(text);
}

// A version that cannot start cannot offer the next one either. So whatever the host has now, a
// repaired version or the one before, is let in at once, and the page starts again with it.
async function letNewerVersionIn() {
  const registration = await navigator.serviceWorker?.getRegistration();
  await registration?.update();
  if (tookOver) return location.reload();
  const worker = registration?.installing ?? registration?.waiting;
  if (!worker) return;
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload());
  const letIn = () => worker.state === "installed" && worker.postMessage("skip-waiting");
  worker.addEventListener("statechange", letIn);
  letIn();
}
