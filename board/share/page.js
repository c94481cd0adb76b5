"use strict";
// Asks the board every two seconds and shows what it says. All foreign text goes in as text, never as markup.
const POLL = 2000, PATIENCE = 5000, OLD = 8000, SETTLE = 700, PAPER_EVERY = 5;
const said = JSON.parse(document.getElementById("words").textContent);
const by = (id) => document.getElementById(id);
let who = "", tab = "calls", page = null, shown = "", since = null, settled = 0, polls = 0, rung = 0, ear = null;
let known = null, asking = false, held = false, gone = false;
try { who = decodeURIComponent(location.hash.slice(1)); } catch { who = ""; }

function made(tag, text, name) {
  const it = document.createElement(tag);
  if (text) it.textContent = text;
  if (name) it.className = name;
  return it;
}

function button(text, name, act) {
  const it = made("button", text, name);
  it.type = "button";
  it.addEventListener("click", () => { if (performance.now() >= settled) act(it); });
  return it;
}

async function ask(path, sent) {
  const how = { cache: "no-store", signal: AbortSignal.timeout(PATIENCE) };
  if (sent) Object.assign(how, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(sent) });
  const came = await fetch(path, how);
  if (!came.ok) throw new Error(String(came.status));
  return came.json();
}

// --- time -----------------------------------------------------------------------------------------------------
function age() {
  if (since === null) return;
  const old = performance.now() - since, seconds = Math.round(old / 1000);
  const told = seconds < 120 ? `${seconds} ${said.old}`
    : seconds < 7200 ? `${Math.round(seconds / 60)} ${said.minutes}` : `${Math.round(seconds / 3600)} ${said.hours}`;
  by("age").textContent = told;
  by("offline").hidden = old < OLD && !gone;
  by("offline").textContent = gone ? said.gone : `${said.offline} ${page.clock} · ${told}`;
}

async function poll() {
  if (asking) return;
  asking = true;
  try {
    const came = await ask(`now?for=${encodeURIComponent(who)}`);
    since = performance.now(); gone = false;
    page = came;
    fill();
    if (tab !== "calls" && polls++ % PAPER_EVERY === 0) await paper();
  } catch (wrong) {
    if (wrong.message === "403" && who) choose("");  // a name that no longer helps
    gone = wrong.message === "404";  // the board began anew, with another code
  } finally {
    asking = false;
    age();
  }
}

// --- calls ----------------------------------------------------------------------------------------------------
function fill() {
  by("clock").textContent = page.clock;
  by("standing").textContent = page.standing;
  by("course").textContent = page.course;
  by("course").className = page.is_late ? "late" : "";
  if (!who && page.hands.length === 1) return choose(page.hands[0]);
  called();
  const now = JSON.stringify([who, page.calls, page.quiet, page.hands]);
  if (tab !== "calls" || now === shown || held) return;  // what a finger is on stays until it is lifted
  const first = (it) => it && it.calls.length ? `${it.calls[0].slot} ${it.calls[0].part} ${it.calls[0].number}` : "";
  if (known !== null && first(page) !== known) settled = performance.now() + SETTLE;  // what came up by itself
  known = first(page);
  shown = now;
  by("main").replaceChildren(...(who ? calls() : hands()));
}

function hands() {
  return [made("h2", said.who), ...page.hands.map((name) => button(name, "who", () => choose(name)))];
}

function choose(name) {
  who = name;
  location.hash = name ? encodeURIComponent(name) : "";
  shown = ""; known = null; rung = 0;
  show("calls");
}

function calls() {
  const found = page.calls.map(card);
  if (!page.calls.some((call) => call.is_due)) {
    const quiet = made("article", "", "quiet");
    quiet.append(made("h2", page.quiet[0]), made("p", page.quiet[1]));
    found.unshift(quiet);
  }
  const foot = made("p", "", "note");
  foot.append(button(ear ? said.sounds : said.sound, "", hear), " ", button(said.others, "", () => choose("")));
  return [...found, foot];
}

function card(call) {
  const it = made("article", "", call.is_due ? "due" : "");
  it.append(made("p", `${call.at} · ${call.when}`, "when"), made("h2", call.what));
  it.append(...call.told.map((text) => made("p", text)));
  if (call.answer) it.append(button(call.answer, call.is_due ? "go" : "", (pressed) => done(call, pressed)));
  else if (call.why) it.append(made("p", call.why, "warns"));
  if (call.amounts.length) {
    const list = made("ul");
    list.append(...call.amounts.map((text) => made("li", text)));
    it.append(made("p", said.made, "note"), list);
  }
  return it;
}

async function done(call, pressed) {
  pressed.disabled = true;
  by("said").textContent = said.waiting;
  await send("done", { for: who, slot: call.slot, part: call.part, number: call.number });
  shown = "";
  settled = performance.now() + SETTLE;
  await poll();
}

async function send(path, sent) {
  try {
    by("said").textContent = (await ask(path, sent)).said;
  } catch {
    by("said").textContent = said.unsent;
  }
}

// --- called ---------------------------------------------------------------------------------------------------
function called() {
  const box = by("called"), is = page.rung > 0;
  const fresh = page.calls.filter((call) => call.is_due).map((call) => `${call.slot} ${call.part} ${call.number}`);
  const news = called.due && fresh.some((key) => !called.due.includes(key));
  called.due = fresh;
  if (is && page.rung !== rung) { sound(3); scrollTo(0, 0); } else if (news) sound(1);
  rung = page.rung;
  box.hidden = !is;
  box.querySelector("h1").textContent = said.called;
}

function hear() {
  ear = ear || new AudioContext();
  sound(1);
  shown = "";
  fill();
}

function sound(strokes) {
  if (navigator.vibrate) navigator.vibrate(Array(strokes).fill([400, 200]).flat());
  for (let n = 0; ear && n < strokes; n++) {
    const tone = ear.createOscillator(), at = ear.currentTime + n * 0.6;
    tone.frequency.value = 880;
    tone.connect(ear.destination);
    tone.start(at);
    tone.stop(at + 0.35);
  }
}

// --- papers ---------------------------------------------------------------------------------------------------
function show(name) {
  tab = name;
  shown = ""; polls = 0;
  for (const each of by("nav").children) each.toggleAttribute("aria-current", each.value === tab);
  by("main").replaceChildren();
  by("said").textContent = "";
  poll();
}

async function paper() {
  const name = tab, found = await ask(name), now = JSON.stringify(found);
  if (name !== tab || now === shown || held) return;
  shown = now;
  by("main").replaceChildren(made("h2", found.title), ...found.warnings.map((text) => made("p", text, "warns")),
    ...found.parts.flatMap(part), ...found.notes.map((text) => made("p", text, "note")));
}

function part(found) {
  return [...(found.title ? [made("h3", found.title)] : []), ...found.rows.map(row)];
}

function row(found) {
  const it = made(found.tick === null ? "div" : "label", "", "row"), text = made("span");
  if (found.tick !== null) it.append(box(found));
  if (found.lead) text.append(made("span", found.lead, "lead"));
  text.append(found.what, ...found.told.map((told) => made("small", told)));
  it.append(text);
  return it;
}

function box(found) {
  const it = made("input");
  it.type = "checkbox";
  it.checked = found.ticked;
  it.addEventListener("change", async () => {
    await send("tick", { number: found.tick, ticked: it.checked });
    shown = "";
    await paper().catch(() => { it.checked = found.ticked; });
  });
  return it;
}

// --- begin ----------------------------------------------------------------------------------------------------
by("nav").append(...["calls", "wall", "plates", "list"].map((name) => {
  const it = button(said[name], "", () => show(name));
  it.value = name;
  return it;
}));
by("called").querySelector("button").textContent = said.coming;
by("called").querySelector("button").className = "go";
by("called").querySelector("button").addEventListener("click", async () => {
  await send("coming", { for: who });
  await poll();
});
for (const name of ["pointerdown", "pointerup", "pointercancel"]) {
  document.addEventListener(name, () => { held = name === "pointerdown"; }, true);
}
document.addEventListener("visibilitychange", () => { if (!document.hidden) poll(); });
setInterval(poll, POLL);
setInterval(age, 1000);
show("calls");
