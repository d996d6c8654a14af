// Posts the form a moment after a change, and puts the new result in the place of the old one. Without it the form's own button
// does the same.
(() => {
  "use strict";
  const form = document.getElementById("figures");
  const state = document.getElementById("state");
  if (!form || !state || !window.fetch || !window.DOMParser || !window.AbortController) return;
  const PAUSE = 700;
  let waiting = 0;
  let running = null;

  // What stands in the result anyway is only for who listens.
  function say(text, seen = true) {
    state.textContent = text || "";
    state.classList.toggle("unseen", !seen);
  }

  function names(root) {
    return Array.from(root.querySelectorAll("#fields [name]"), (one) => one.name).join("\n");
  }

  function put(page) {
    const found = page.getElementById("found");
    const fields = page.getElementById("fields");
    const here = document.getElementById("found");
    if (!found || !fields) return false;
    here.replaceWith(document.adoptNode(found));
    if (names(page) !== names(document)) {
      const focused = document.activeElement && document.activeElement.id;
      document.getElementById("fields").replaceWith(document.adoptNode(fields));
      const again = focused && document.getElementById(focused);
      if (again) again.focus();
    } else {
      for (const hint of fields.querySelectorAll("[data-follows]")) {
        const mine = document.getElementById(hint.id);
        if (mine) mine.textContent = hint.textContent;
      }
    }
    return true;
  }

  async function post() {
    if (running) running.abort();
    const mine = (running = new AbortController());
    const busy = document.getElementById("found");
    busy.setAttribute("aria-busy", "true");
    say(state.dataset.working);
    const body = new URLSearchParams(new FormData(form));
    try {
      const answer = await fetch(form.action, { method: "POST", body, signal: mine.signal, credentials: "omit" });
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      if (running !== mine) return;
      const head = put(page) && document.querySelector("#found h2");
      say(head ? head.textContent : state.dataset.lost, !head);
    } catch (fault) {
      if (running === mine && fault.name !== "AbortError") say(state.dataset.lost);
    } finally {
      if (running === mine) {
        running = null;
        document.getElementById("found").removeAttribute("aria-busy");
      }
    }
  }

  form.addEventListener("input", () => {
    window.clearTimeout(waiting);
    if (running) running.abort();
    say(state.dataset.changed);
  });
  form.addEventListener("change", () => {
    window.clearTimeout(waiting);
    waiting = window.setTimeout(post, PAUSE);
  });
  form.addEventListener("submit", (event) => {
    // Files are taken away by the browser itself.
    if (event.submitter && event.submitter.hasAttribute("formaction")) return;
    event.preventDefault();
    window.clearTimeout(waiting);
    post();
  });
})();
