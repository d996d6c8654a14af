"use strict";
(() => {
  const form = document.querySelector("form.filters");
  const garments = Array.from(document.querySelectorAll("article"));
  const none = document.querySelector(".none");
  const fits = (garment, measure, cm) =>
    garment.dataset.fits.split("|").some((range) => {
      const [name, least, most] = range.split(":");
      return name === measure && Number(least) <= cm && cm <= Number(most);
    });
  const has = (garment, name, value) => !value || garment.dataset[name].split(" ").includes(value);
  const sift = () => {
    const chosen = Object.fromEntries(new FormData(form));
    const cm = parseFloat(chosen.cm);
    let count = 0;
    for (const garment of garments) {
      const shown =
        ["language", "bed", "yarn", "technique"].every((name) => has(garment, name, chosen[name] || "")) &&
        (!(cm > 0) || fits(garment, chosen.measure, cm));
      garment.hidden = !shown;
      count += shown ? 1 : 0;
    }
    form.elements.count.value = String(count);
    none.hidden = count > 0;
  };
  // Opened as `index.html#watch` while `publish --watch` runs, it is loaded again when something was made. What was made last is told
  // by the size of a picture, for that is all that a page may know of a file beside it.
  const watch = (before) => {
    const mark = new Image();
    const again = (now) => window.setTimeout(() => watch(now), 300);
    mark.onload = () => {
      const now = `${mark.naturalWidth} ${mark.naturalHeight}`;
      if (!before || before === now) { again(now); return; }
      keep();
      window.location.reload();
    };
    mark.onerror = () => again(before);
    mark.src = `.walewright-kept/made.svg?${Date.now()}`;
  };
  const CHOSEN = "chosen on the shelf";
  const keep = () => {
    try { window.sessionStorage.setItem(CHOSEN, JSON.stringify([...new FormData(form)])); } catch (fault) { /* not kept */ }
  };
  const restore = () => {
    try {
      for (const [name, value] of JSON.parse(window.sessionStorage.getItem(CHOSEN) || "[]"))
        if (form.elements[name]) form.elements[name].value = value;
    } catch (fault) { /* nothing kept */ }
  };
  if (window.location.hash === "#watch") { restore(); watch(""); }
  form.hidden = false;
  form.addEventListener("input", sift);
  form.addEventListener("submit", (event) => event.preventDefault());
  sift();
})();
