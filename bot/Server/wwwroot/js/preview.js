// The author's proof. Everything shown comes from the program beside it; a save on disk shows at once.
const at = (id) => document.getElementById(id);
const state = { all: null, path: "index.md", seen: [], failed: [] };

const make = (name, text, attributes = {}) => {
  const element = document.createElement(name);
  if (text !== undefined) element.textContent = text;
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  return element;
};
const percent = (share) => (share * 100).toFixed(share < 0.1 ? 1 : 0);
const minutes = (value) => `${value.toFixed(1)} min`;

async function ask(path, body) {
  const answer = await fetch(path, body && { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) });
  const json = await answer.json();
  if (!answer.ok) throw new Error(json.detail ?? answer.statusText);
  return json;
}

function showList() {
  const words = at("find").value.toLowerCase();
  const wrong = new Map();
  for (const found of state.all.found) wrong.set(found.path, (wrong.get(found.path) ?? 0) + 1);
  at("paths").replaceChildren(...state.all.paths.filter((path) => path.includes(words)).slice(0, 200).map((path) => {
    const button = make("button", wrong.has(path) ? `${path}: ${wrong.get(path)} wrong` : path, { type: "button" });
    if (path === state.path) button.setAttribute("aria-current", "page");
    button.addEventListener("click", () => { state.path = path; showList(); showPage(); });
    const item = make("li");
    item.append(button);
    return item;
  }));
}

function note(found) {
  const box = make("div", undefined, { class: `proof-wrong ${found.severity}` });
  box.append(make("b", `Line ${found.line}: `), found.message, found.help ? make("p", found.help) : "", make("p", found.rule, { class: "proof-note" }));
  return box;
}

async function showPage() {
  const page = at("page");
  try {
    page.innerHTML = (await ask(`/api/preview/page?path=${encodeURIComponent(state.path)}`)).html;
  } catch {
    page.replaceChildren(make("p", "This page is gone."));
    return;
  }

  const blocks = [...page.querySelectorAll("[data-line]")];
  for (const found of state.all.found.filter((each) => each.path === state.path).reverse()) {
    const block = blocks.findLast((each) => Number(each.dataset.line) <= found.line);
    if (block) block.after(note(found)); else page.prepend(note(found));
  }
}

// Links of a page lead inside the proof.
at("page").addEventListener("click", (event) => {
  const link = event.target.closest("a");
  if (!link) return;
  const target = new URL(link.getAttribute("href"), `http://pages/${state.path}`);
  if (target.host !== "pages") return;
  event.preventDefault();
  state.path = decodeURIComponent(target.pathname.slice(1));
  showList();
  showPage();
});

function fill(select, entries, wanted) {
  const kept = wanted ?? select.value;
  select.replaceChildren(...entries.map((entry) => make("option", entry.title, { value: entry.id })));
  if (entries.some((entry) => entry.id === kept)) select.value = kept;
}

function showGiven() {
  const given = [
    ...state.seen.map((seen, place) => [`${seen.check}: ${seen.outcome}`, () => state.seen.splice(place, 1)]),
    ...state.failed.map((repair, place) => [`${repair}: did not help`, () => state.failed.splice(place, 1)]),
  ];
  at("given").replaceChildren(...given.map(([text, remove]) => {
    const button = make("button", `${text} (take back)`, { type: "button" });
    button.addEventListener("click", () => { remove(); showWalk(); });
    const item = make("li");
    item.append(button);
    return item;
  }));
}

function showOption(option, place) {
  const item = make("li", undefined, place === 0 ? { class: "proof-next" } : {});
  item.append(option.title, make("p", `${minutes(option.price)} now, ${minutes(option.leastMinutes)} to ${minutes(option.minutes)} to the end`, { class: "proof-note" }));
  if (option.check) {
    item.append(make("p", option.ask));
    for (const outcome of option.outcomes) {
      const button = make("button", `${outcome.answer} (${percent(outcome.probability)} %)`, { type: "button" });
      button.addEventListener("click", () => { state.seen.push({ check: option.check, outcome: outcome.id }); showWalk(); });
      item.append(button);
    }
  } else if (option.repair) {
    const button = make("button", "It did not help", { type: "button" });
    button.addEventListener("click", () => { state.failed.push(option.repair); showWalk(); });
    item.append(button);
  }
  return item;
}

// The point of the walk stands in the address, so that it can be kept and sent.
function remember() {
  const point = { series: at("series").value, symptom: at("symptom").value, seen: state.seen, failed: state.failed };
  history.replaceState(null, "", `#${encodeURIComponent(JSON.stringify(point))}`);
  return point;
}

async function showWalk() {
  showGiven();
  try {
    const walk = await ask("/api/preview/walk", remember());
    at("figures").textContent = `${minutes(walk.leastMinutes)} to ${minutes(walk.minutes)} expected${walk.exact ? ", exact" : ""}; unit: ${walk.access}`;
    at("options").replaceChildren(...walk.options.slice(0, 5).map(showOption));
    at("belief").replaceChildren(...walk.belief.map((fault) => {
      const row = make("tr");
      row.append(make("td", fault.title), make("td", percent(fault.probability)));
      return row;
    }));
  } catch (error) {
    at("figures").textContent = error.message;
    at("options").replaceChildren();
    at("belief").replaceChildren();
  }
}

async function showAll(point) {
  state.all = await ask("/api/preview/pages");
  at("state").textContent = `${state.all.pages} pages, ${state.all.errors} errors, ${state.all.warnings} warnings`
    + (state.all.usesLastGood ? "; walks use the last version without errors" : "");
  fill(at("series"), state.all.series, point?.series);
  fill(at("symptom"), state.all.symptoms, point?.symptom);
  showList();
  await showPage();
  await showWalk();
}

at("find").addEventListener("input", showList);
for (const id of ["series", "symptom"]) at(id).addEventListener("change", () => { state.seen = []; state.failed = []; showWalk(); });

let point = null;
try {
  point = JSON.parse(decodeURIComponent(location.hash.slice(1)));
  state.seen = point.seen ?? [];
  state.failed = point.failed ?? [];
} catch { /* no point was named */ }
const changes = new EventSource("/api/preview/changes");
changes.addEventListener("pages", () => { showAll(point); point = null; });
