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
  form.hidden = false;
  form.addEventListener("input", sift);
  form.addEventListener("submit", (event) => event.preventDefault());
  sift();
})();
