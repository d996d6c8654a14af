// The result follows what is typed; printing tells its pages and can be stopped; what is filled in outlives a reload. Without scripts
// the form's own buttons do all that has to be done.
(() => {
  "use strict";
  if (!window.fetch || !window.DOMParser || !window.AbortController) return;

  // A file can be dropped on the whole form that asks for it.
  for (const form of document.querySelectorAll("[data-drop]")) {
    const input = document.getElementById(form.dataset.drop);
    const over = (event, on) => { event.preventDefault(); form.classList.toggle("drop", on); };
    form.addEventListener("dragover", (event) => over(event, true));
    form.addEventListener("dragleave", (event) => over(event, false));
    form.addEventListener("drop", (event) => {
      over(event, false);
      if (event.dataTransfer.files.length) input.files = event.dataTransfer.files;
    });
  }

  const form = document.getElementById("figures");
  const state = document.getElementById("state");
  if (!form || !state) return;
  const TYPING = 600;
  const LOOK = 400;
  let waiting = 0;
  let running = null;

  // What stands in the result anyway is only for who listens.
  function say(text, seen = true) {
    state.textContent = text || "";
    state.classList.toggle("unseen", !seen);
  }

  // ----------------------------------------------------------------- what is filled in, kept by this tab

  const place = `figures of ${form.dataset.garment}`;

  function fields() {
    return Array.from(form.querySelectorAll("#fields [name]"));
  }

  function keep() {
    const kept = {};
    for (const one of fields()) if (one.value) kept[one.name] = one.value;
    try { window.sessionStorage.setItem(place, JSON.stringify(kept)); } catch (fault) { /* not kept */ }
  }

  function restore() {
    let kept = {};
    try { kept = JSON.parse(window.sessionStorage.getItem(place) || "{}"); } catch (fault) { return; }
    for (const one of fields()) {
      const text = kept[one.name];
      if (typeof text !== "string" || one.type === "hidden") continue;
      if (one.tagName !== "SELECT" || Array.from(one.options).some((option) => option.value === text)) one.value = text;
      const closed = text && one.closest("details");
      if (closed && one.tagName === "INPUT") closed.open = true;
    }
  }

  // ----------------------------------------------------------------- the result

  function names(root) {
    return Array.from(root.querySelectorAll("#fields [name]"), (one) => one.name).join("\n");
  }

  function put(page) {
    const found = page.getElementById("found");
    const theirs = page.getElementById("fields");
    if (!found || !theirs) return false;
    document.getElementById("found").replaceWith(document.adoptNode(found));
    if (names(page) !== names(document)) {
      const focused = document.activeElement && document.activeElement.id;
      document.getElementById("fields").replaceWith(document.adoptNode(theirs));
      const again = focused && document.getElementById(focused);
      if (again) again.focus();
    } else {
      for (const hint of theirs.querySelectorAll("[data-follows]")) {
        const mine = document.getElementById(hint.id);
        if (mine) mine.textContent = hint.textContent;
      }
    }
    return true;
  }

  async function post() {
    window.clearTimeout(waiting);
    if (running) running.abort();
    const mine = (running = new AbortController());
    document.getElementById("found").setAttribute("aria-busy", "true");
    say(state.dataset.working);
    const body = new URLSearchParams(new FormData(form));
    try {
      const answer = await fetch(form.action, { method: "POST", body, signal: mine.signal, credentials: "omit" });
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      if (running !== mine) return;
      const head = put(page) && document.querySelector("#found h2");
      // Of another start of the program, the address is another.
      say(head ? head.textContent : answer.status === 404 ? state.dataset.lostPage : state.dataset.lost, !head);
    } catch (fault) {
      if (running === mine && fault.name !== "AbortError") say(state.dataset.lost);
    } finally {
      if (running === mine) {
        running = null;
        document.getElementById("found").removeAttribute("aria-busy");
      }
    }
  }

  function soon() {
    window.clearTimeout(waiting);
    if (running) running.abort();
    say(state.dataset.changed);
    waiting = window.setTimeout(post, TYPING);
  }

  // ----------------------------------------------------------------- printing

  async function print(button) {
    const here = document.getElementById("printing");
    const told = here.querySelector("p");
    const mine = new AbortController();
    const ticket = Array.from(window.crypto.getRandomValues(new Uint8Array(8)), (b) => b.toString(16).padStart(2, "0")).join("");
    const body = new URLSearchParams(new FormData(form));
    body.set("ticket", ticket);
    here.hidden = false;
    told.textContent = here.dataset.begun;
    const stop = here.querySelector("button");
    stop.hidden = false;
    stop.onclick = () => mine.abort();
    const looking = window.setInterval(async () => {
      try {
        const at = await (await fetch(button.dataset.printing + ticket, { signal: mine.signal })).json();
        if (at.page && !mine.signal.aborted) told.textContent = here.dataset.page.replace("#", at.page);
      } catch (fault) { /* the answer itself says what went wrong */ }
    }, LOOK);
    try {
      const answer = await fetch(button.formAction, { method: "POST", body, signal: mine.signal, credentials: "omit" });
      const named = /filename="([^"]+)"/.exec(answer.headers.get("content-disposition") || "");
      if (named) {
        save(await answer.blob(), named[1]);
        told.textContent = here.dataset.done;
      } else if (!put(new DOMParser().parseFromString(await answer.text(), "text/html"))) {
        say(state.dataset.lost);
        here.hidden = true;
      }
    } catch (fault) {
      here.hidden = true;
      if (fault.name !== "AbortError") say(state.dataset.lost);
    } finally {
      window.clearInterval(looking);
      stop.hidden = true;
    }
  }

  function save(blob, name) {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(blob);
    link.download = name;
    document.body.append(link);
    link.click();
    link.remove();
    window.setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  }

  form.addEventListener("input", () => { keep(); soon(); });
  form.addEventListener("submit", (event) => {
    const button = event.submitter;
    if (button && button.dataset.printing) {
      event.preventDefault();
      print(button);
    } else if (!button || !button.hasAttribute("formaction")) {
      // Other files are taken away by the browser itself.
      event.preventDefault();
      post();
    }
  });
  if (!document.querySelector("#found div.state")) {
    restore();
    if (fields().length) post();
  } else {
    keep();
  }
})();
