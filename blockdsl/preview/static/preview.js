// The page of the preview: asks for what a file declares, draws it, and asks again when something was saved. What the
// maker wrote comes as text and is put in as text; only the drawings, which we made, come as markup.

const SVG = "http://www.w3.org/2000/svg";
const at = (id) => document.getElementById(id);
const state = { item: 0, colourway: "", size: "", setting: "", paper: "", frame: 0, chosen: null, shown: null };

function made(tag, text, properties = {}) {
  const element = document.createElement(tag);
  if (text !== undefined) write(element, text);
  return Object.assign(element, properties);
}

// Text with its fractions set as fractions.
function write(element, text) {
  const parts = String(text).split(/(\d+\/\d+)/);
  element.replaceChildren(...parts.map((part, place) => {
    if (place % 2 === 0) return document.createTextNode(part);
    const fraction = document.createElement("span");
    fraction.className = "fraction";
    fraction.textContent = part;
    return fraction;
  }));
}

function query(extra = {}) {
  const { item, colourway, size, setting, paper } = state;
  return new URLSearchParams({ item, colourway, size, setting, paper, ...extra }).toString();
}

// Markup that we drew, put in as a picture: parsed as a document of its own, so that nothing in it can run.
function drawn(markup) {
  return document.importNode(new DOMParser().parseFromString(markup, "text/html").body.firstElementChild, true);
}

// --- asking -------------------------------------------------------------------------------------

let asked = 0;

async function refresh() {
  const mine = ++asked;
  const answer = await fetch(`data?${query()}`);
  if (!answer.ok) return;
  const data = await answer.json();
  if (mine !== asked) return;
  state.item = data.item ?? 0;
  state.shown = data.shown;
  document.title = `${data.shown?.name ?? data.file} · preview`;
  at("stale").hidden = !(data.broken && data.shown);
  showProblems(data);
  showChoices(data);
  showDrawing(data.shown);
  showCutting(data.shown);
  if (data.shown) {
    await Promise.all([showFiles(), at("sew").checked ? showFrame() : undefined]);
  }
  document.body.dataset.number = data.number;
}

function listen() {
  const source = new EventSource("events");
  source.onmessage = refresh;
  source.onopen = () => { at("connection").textContent = ""; };
  source.onerror = () => { at("connection").textContent = "The preview has ended. Start it again to go on."; };
  window.addEventListener("pagehide", () => source.close());
}

// --- problems -----------------------------------------------------------------------------------

function showProblems({ problems, file, shown }) {
  const box = at("problems");
  box.replaceChildren();
  if (!problems.length && shown) return;
  box.append(made("h2", problems.length ? "Problems" : "Nothing to draw yet"));
  if (!problems.length) {
    box.append(made("p", `${file} declares no block and no quilt.`));
    return;
  }
  const list = made("ol");
  for (const each of problems) {
    const item = made("li");
    item.append(made("span", `${each.severity}: `, { className: each.severity }), made("span", each.message));
    item.append(made("div", `${each.file}, line ${each.line}`, { className: "quiet" }));
    if (each.text.trim()) item.append(made("pre", each.text, { tabIndex: 0 }));
    if (each.help) item.append(made("div", each.help));
    list.append(item);
  }
  box.append(list);
}

// --- choices ------------------------------------------------------------------------------------

function fill(select, options, value) {
  select.replaceChildren(...options.map(([word, text]) => made("option", text, { value: word })));
  select.value = options.some(([word]) => String(word) === String(value)) ? value : options[0]?.[0] ?? "";
  select.closest("label").hidden = options.length < 2;
}

function showChoices({ items, item, choices }) {
  fill(at("item"), items.map((each, place) => [place, each.name]), item);
  const { colourways = [], sizes = [], settings = [], papers = [] } = choices ?? {};
  fill(at("colourway"), [["", "as written"], ...colourways.map((name) => [name, name])], state.colourway);
  fill(at("choice-size"), [["", "as written"], ...sizes.map((name) => [name, name])], state.size);
  const asWritten = settings.length ? [["", "as written"]] : [];
  fill(at("setting"), [...asWritten, ...settings.map((name) => [name, name])], state.setting);
  fill(at("paper"), papers.map(({ name, title }) => [name, title]), state.paper);
  state.paper = at("paper").value;
}

function choose(id, key) {
  at(id).addEventListener("change", (event) => {
    state[key] = event.target.value;
    if (key === "item") Object.assign(state, { frame: 0, chosen: null });
    refresh();
  });
}

// --- the drawing --------------------------------------------------------------------------------

function showDrawing(shown) {
  const figure = at("drawing");
  const hadFocus = figure.contains(document.activeElement);
  figure.replaceChildren();
  at("name").textContent = shown?.name ?? "Preview";
  const sizes = shown ? [`${shown.size} finished`, shown.unfinished && `${shown.unfinished} unfinished`] : [];
  write(at("size"), sizes.filter(Boolean).join(", "));
  at("sew").closest("label").hidden = !shown?.frames;
  at("letters").closest("label").hidden = !shown?.patches.length;
  if (!shown) return;
  const cloth = drawn(shown.svg);
  cloth.classList.add("cloth");
  figure.append(cloth);
  if (shown.patches.length) {
    const over = document.createElementNS(SVG, "svg");
    over.setAttribute("class", "over");
    over.setAttribute("viewBox", cloth.getAttribute("viewBox"));
    over.setAttribute("role", "group");
    over.setAttribute("aria-label", "Patches: arrow keys go from one to the next");
    shown.patches.forEach((patch, place) => over.append(patchPath(patch, place)));
    if (at("letters").checked) shown.patches.forEach((patch) => over.append(...letterOf(patch)));
    figure.append(over);
    if (state.chosen !== null && !shown.patches[state.chosen]) state.chosen = null;
    tell(state.chosen);
    if (hadFocus && state.chosen !== null) over.children[state.chosen].focus({ preventScroll: true });
  } else {
    state.chosen = null;
    at("patch").replaceChildren();
  }
  look();
}

function patchPath(patch, place) {
  const path = document.createElementNS(SVG, "path");
  path.setAttribute("d", patch.path);
  path.setAttribute("role", "button");
  path.setAttribute("aria-label", `${patch.label}, ${patch.fabric}`);
  path.setAttribute("tabindex", place === (state.chosen ?? 0) ? "0" : "-1");
  if (patch.lit) path.classList.add("lit");
  path.addEventListener("click", () => tell(place, true));
  path.addEventListener("keydown", (event) => {
    const ways = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowDown: [0, 1], ArrowUp: [0, -1] };
    if (event.key in ways) {
      const next = neighbour(place, ...ways[event.key]);
      if (next !== null) tell(next, true);
    } else if (event.key === "Enter" || event.key === " ") {
      tell(place, true);
    } else {
      return;
    }
    event.preventDefault();
    event.stopPropagation();
  });
  return path;
}

function letterOf({ label, x, y, room }) {
  if (room < 4) return [];
  const text = document.createElementNS(SVG, "text");
  text.setAttribute("x", x);
  text.setAttribute("y", y);
  text.setAttribute("font-size", Math.min(20, Math.max(8, room)));
  text.textContent = label;
  return [text];
}

// The nearest patch that way: what lies straight ahead before what lies aside.
function neighbour(place, dx, dy) {
  const here = state.shown.patches[place];
  let best = null;
  let least = Infinity;
  state.shown.patches.forEach((other, number) => {
    const ahead = (other.x - here.x) * dx + (other.y - here.y) * dy;
    const aside = Math.abs((other.x - here.x) * dy) + Math.abs((other.y - here.y) * dx);
    const far = ahead + 2 * aside;
    if (number !== place && ahead > 0.5 && far < least) [best, least] = [number, far];
  });
  return best;
}

function tell(place, focus = false) {
  state.chosen = place;
  const box = at("patch");
  box.replaceChildren();
  const paths = [...at("drawing").querySelectorAll(".over path")];
  const patch = place === null ? null : state.shown.patches[place];
  paths.forEach((path, number) => {
    const other = state.shown.patches[number];
    path.classList.toggle("chosen", number === place);
    path.classList.toggle("alike", patch !== null && number !== place && other.label === patch.label && other.fabric === patch.fabric);
    path.setAttribute("tabindex", number === (place ?? 0) ? "0" : "-1");
  });
  if (patch === null) return;
  if (focus) {
    paths[place].focus({ preventScroll: true });
    if (patch.line) fetch("chosen", { method: "POST", body: JSON.stringify({ file: patch.file, line: patch.line }) });
  }
  box.append(made("h2", `${patch.label}: ${patch.fabric}`));
  const list = made("dl");
  const rows = [
    ["finished", patch.size],
    ["cut", patch.cut.join("; ")],
    ["steps", patch.steps.join(", ")],
    ["line", patch.line ? `${patch.line} of ${patch.file}` : ""],
  ];
  for (const [name, words] of rows) if (words) list.append(made("dt", name), made("dd", words));
  box.append(list);
}

function look() {
  const eyes = at("eyes").value;
  for (const each of [at("drawing").querySelector(".cloth"), at("frame").firstElementChild]) {
    if (each) {
      each.classList.remove("grey", "red-blind", "green-blind", "blue-blind");
      if (eyes) each.classList.add(eyes);
    }
  }
}

// --- sewing, seam by seam -----------------------------------------------------------------------

async function showFrame() {
  const answer = await fetch(`frame?${query({ frame: state.frame })}`);
  if (!answer.ok) return;
  const frame = await answer.json();
  state.frame = frame.number;
  at("step").textContent = [frame.title, frame.made].filter(Boolean).join(" · ");
  at("frame").replaceChildren(drawn(frame.svg));
  write(at("words"), frame.words);
  [...at("drawing").querySelectorAll(".over path")].forEach((path, place) => {
    path.classList.toggle("sewn", state.shown.patches[place].steps.includes(frame.step));
  });
  const seam = frame.seams ? ` · seam ${frame.seam} of ${frame.seams}` : "";
  at("where").textContent = `${frame.number + 1} of ${frame.count}${seam}`;
  at("back").disabled = frame.number === 0;
  at("on").disabled = frame.number === frame.count - 1;
  at("sewing").dataset.frame = frame.number;
  look();
}

function stepBy(count) {
  if (!at("sew").checked || !state.shown?.frames) return;
  state.frame = Math.min(Math.max(state.frame + count, 0), state.shown.frames - 1);
  showFrame();
}

// --- beside the sheet ---------------------------------------------------------------------------

function showCutting(shown) {
  const box = at("cutting");
  box.replaceChildren();
  if (!shown?.cutting.length) return;
  box.append(made("h2", "Cutting"));
  const list = made("ul");
  for (const cut of shown.cutting) {
    const item = made("li");
    const letter = made("button", cut.label, { type: "button", title: "Show these patches" });
    letter.addEventListener("click", () => {
      const place = shown.patches.findIndex((patch) => patch.label === cut.label);
      if (place >= 0) tell(place);
    });
    item.append(letter, made("span", [`${cut.cut}, ${cut.fabric}`, cut.then].filter(Boolean).join("; ")));
    list.append(item);
  }
  box.append(list);
}

async function showFiles() {
  const answer = await fetch(`files?${query()}`);
  if (!answer.ok) return;
  const found = await answer.json();
  at("downloads").replaceChildren(...found.map(({ word, title, name }) => {
    const item = made("li");
    item.append(made("a", `${title} (${name})`, { href: `files/${encodeURIComponent(word)}?${query()}`, download: name }));
    return item;
  }));
}

// --- the page -----------------------------------------------------------------------------------

for (const [id, key] of [["item", "item"], ["colourway", "colourway"], ["choice-size", "size"], ["setting", "setting"], ["paper", "paper"]]) {
  choose(id, key);
}
at("choices").addEventListener("submit", (event) => event.preventDefault());
at("eyes").addEventListener("change", look);
at("letters").addEventListener("change", () => showDrawing(state.shown));
at("sew").addEventListener("change", (event) => {
  at("sewing").hidden = !event.target.checked;
  if (event.target.checked) showFrame();
  else showDrawing(state.shown);
});
at("back").addEventListener("click", () => stepBy(-1));
at("on").addEventListener("click", () => stepBy(1));
document.addEventListener("keydown", (event) => {
  if (event.target instanceof HTMLSelectElement || event.altKey || event.ctrlKey || event.metaKey) return;
  if (event.key === "ArrowRight") stepBy(1);
  else if (event.key === "ArrowLeft") stepBy(-1);
  else return;
  if (at("sew").checked) event.preventDefault();
});
listen();
