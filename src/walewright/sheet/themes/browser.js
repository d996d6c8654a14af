"use strict";
// Shows and hides what stands on the page. It writes no words: what it shows in the bar is copied from the line in work.
(() => {
  const SMALLEST = -2, LARGEST = 5, BY = 1.15;
  const find = (selector, within = document) => within.querySelector(selector);
  const all = (selector, within = document) => [...within.querySelectorAll(selector)];
  const body = document.body, bar = find("#bench"), picking = find("#picking"), key = "walewright " + body.dataset.key;
  const kept = { size: "", type: 0, at: {}, done: {}, ...recalled() };
  const sizes = all("button[data-size]", picking), before = new Map();
  let steps = [], at = -1, done = [];

  function recalled() {
    try {
      return JSON.parse(localStorage.getItem(key)) || {};
    } catch {
      return {};
    }
  }

  function keep() {
    if (kept.size) {
      kept.at[kept.size] = at;
      kept.done[kept.size] = done.map(Number).join("");
    }
    try {
      localStorage.setItem(key, JSON.stringify(kept));
    } catch {
      // A browser that keeps nothing still ticks off.
    }
  }

  // ------------------------------------------------------------- a size

  function pick(size) {
    kept.size = size;
    all(".bench").forEach((lines) => lines.remove());
    sizes.forEach((button) => button.setAttribute("aria-pressed", String(button.dataset.size === size)));
    all("[data-sizes]").forEach((block) => { block.hidden = !block.dataset.sizes.split(" ").includes(size); });
    if (size) body.dataset.size = size; else delete body.dataset.size;
    columns(size);
    steps = [];
    const made = size ? find(`template[data-size="${size}"]`).content.cloneNode(true) : null;
    const lines = new Map(made ? all(".bench", made).map((one) => [one.dataset.part, one]) : []);
    all("section.part").forEach((part) => {
      part.hidden = Boolean(size) && !lines.has(part.id);
      all(`.contents a[href="#${part.id}"]`).forEach((link) => { link.parentElement.hidden = part.hidden; });
      if (lines.has(part.id)) begin(part, lines.get(part.id));
    });
    done = steps.map((_, number) => (kept.done[size] || "")[number] === "1");
    steps.forEach((step, number) => mark(step, done[number]));
    bar.hidden = !size;
    at = -1;
    if (size) show(Math.min(kept.at[size] || 0, steps.length));
    else inWork(null);
  }

  function begin(part, lines) {
    const copies = (lines.dataset.copies || "").split("|"), title = find("h2", part).textContent;
    const rows = all("li:not(.note)", lines).map((line) => {
      const words = find("p", line), boxes = document.createElement("span");
      boxes.className = "boxes";
      copies.forEach((copy) => {
        const box = document.createElement("input");
        box.type = "checkbox";
        box.setAttribute("aria-label", `${copy} ${words.textContent}`.trim());
        boxes.append(box);
      });
      line.prepend(boxes);
      return { line, boxes: [...boxes.children] };
    });
    copies.forEach((copy, number) => rows.forEach(({ line, boxes }) => {
      steps.push({ line, box: boxes[number], copy, part: title });
    }));
    part.append(lines);
  }

  // Of tables with a column a size, the column of the size that is picked.
  function columns(size) {
    const many = Number(body.className.match(/sizes-(\d+)/)[1]);
    all(`table.sizes.of-${many}`).forEach((table) => [...table.rows].forEach((row) => {
      const cells = [...row.cells], labels = cells.length - many;
      if (labels < 0) {
        if (!before.has(cells[0])) before.set(cells[0], cells[0].colSpan);
        cells[0].colSpan = before.get(cells[0]) - (size ? many - 1 : 0);
        return;
      }
      cells.slice(labels).forEach((cell, number) => { cell.hidden = Boolean(size) && number !== Number(size); });
    }));
  }

  // ------------------------------------------------------------- a step

  function mark(step, ticked) {
    step.box.checked = ticked;
    const boxes = all("input", step.line);
    step.line.classList.toggle("done", boxes.every((box) => box.checked));
  }

  function show(number) {
    at = number;
    const step = steps[number];
    inWork(step);
    find("progress", bar).value = steps.length ? done.filter(Boolean).length / steps.length : 0;
    find(".finished", bar).hidden = Boolean(step);
    for (const name of [".say", ".figures"]) find(name, bar).hidden = !step;
    bar.classList.toggle("uncounted", !step || !step.line.dataset.on);
    const say = find(".say", bar);
    find(".part", bar).textContent = step ? step.part : "";
    find(".copy", bar).textContent = step ? step.copy : "";
    find(".stage", bar).textContent = step ? titleOver(step.line) : "";
    say.replaceChildren(...(step ? [...find("p", step.line).childNodes].map((node) => node.cloneNode(true)) : []));
    if (step) {
      const { rc = "", side = "", on = "" } = step.line.dataset;
      find(".rc dd", bar).textContent = rc;
      find(".side", bar).dataset.at = side;
      all(".count dd", bar).forEach((figure, place) => { figure.textContent = on.split(" ")[place] || ""; });
      step.line.scrollIntoView({ block: "center" });
    }
  }

  function titleOver(line) {
    const over = line.parentElement.previousElementSibling;
    return over && over.tagName === "H3" ? over.textContent : "";
  }

  // The line in work, and the rows of charts that it is for.
  function inWork(step) {
    all("li[aria-current]").forEach((line) => line.removeAttribute("aria-current"));
    all("svg .in-work").forEach((row) => row.remove());
    if (!step) return;
    step.line.setAttribute("aria-current", "step");
    const charts = (step.line.dataset.charts || "").split(" ");
    for (let n = 0; n + 1 < charts.length; n += 2) chartRow(charts[n], Number(charts[n + 1]));
  }

  function chartRow(chart, row) {
    all(`#${CSS.escape(chart)} figure.sheet[data-low]`).forEach((sheet) => {
      const { low, high, rise, wide } = sheet.dataset;
      if (row < low || row > high) return;
      const tint = document.createElementNS("http://www.w3.org/2000/svg", "rect");
      const place = { class: "in-work", x: 0, y: (high - row) * rise, width: wide, height: rise };
      Object.entries(place).forEach(([name, value]) => tint.setAttribute(name, value));
      find("svg", sheet).append(tint);
    });
  }

  function tick(number, ticked) {
    done[number] = ticked;
    mark(steps[number], ticked);
  }

  function onward(number) {
    for (let ahead = 1; ahead <= steps.length; ahead += 1) {
      const other = (number + ahead) % steps.length;
      if (!done[other]) return other;
    }
    return steps.length;
  }

  function next() {
    if (at >= steps.length) return;
    tick(at, true);
    show(onward(at));
    keep();
  }

  function back() {
    if (at <= 0) return;
    tick(at - 1, false);
    show(at - 1);
    keep();
  }

  // ------------------------------------------------------------- hands

  function typed(by) {
    kept.type = Math.max(SMALLEST, Math.min(LARGEST, kept.type + by));
    document.documentElement.style.setProperty("--type", String(BY ** kept.type));
  }

  picking.addEventListener("click", ({ target }) => {
    const button = target.closest("button");
    if (!button) return;
    if (button.dataset.type) typed(Number(button.dataset.type));
    else {
      pick(button.dataset.size);
      if (kept.size) find(".next", bar).focus({ preventScroll: true });
    }
    keep();
  });
  find(".next", bar).addEventListener("click", next);
  find(".back", bar).addEventListener("click", back);
  document.addEventListener("change", ({ target }) => {
    const number = steps.findIndex(({ box }) => box === target);
    if (number < 0) return;
    tick(number, target.checked);
    show(number === at && target.checked ? onward(number) : at);
    keep();
  });
  document.addEventListener("click", ({ target }) => {
    const line = target.closest(".bench li:not(.note) p");
    if (!line) return;
    const of = steps.flatMap((step, number) => (step.line === line.parentElement ? [number] : []));
    show(of.find((number) => !done[number]) ?? of[0]);
    keep();
  });
  const KEYS = { " ": next, Enter: next, ArrowRight: next, PageDown: next, ArrowLeft: back, PageUp: back };
  document.addEventListener("keydown", (event) => {
    const act = KEYS[event.key];
    if (!act || bar.hidden || event.ctrlKey || event.altKey || event.metaKey || event.shiftKey) return;
    // Enter and space belong to the button, box or link that has the focus.
    if ([" ", "Enter"].includes(event.key) && event.target.closest("button, input, a")) return;
    event.preventDefault();
    if (!event.repeat) act();
  });

  // What is wider than the screen can be moved by keys.
  const fitted = new ResizeObserver((seen) => seen.forEach(({ target }) => {
    if (target.scrollWidth > target.clientWidth) target.tabIndex = 0; else target.removeAttribute("tabindex");
  }));
  all(".whole, .sizes-to-pick").forEach((block) => fitted.observe(block));
  new ResizeObserver(() => {
    document.documentElement.style.setProperty("--bar", `${bar.hidden ? 0 : bar.offsetHeight}px`);
  }).observe(bar);
  picking.hidden = false;
  typed(0);
  if (sizes.some((button) => button.dataset.size && button.dataset.size === kept.size)) pick(kept.size);
})();
