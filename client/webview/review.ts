import type { Decision, FromReview, ReviewEntry, Reviewed, ReviewLine, ToReview, Words } from './review-messages.ts';

declare function acquireVsCodeApi(): { postMessage(message: FromReview): void };

const editor = acquireVsCodeApi();
const tell = (message: FromReview): void => editor.postMessage(message);

interface Shown {
  readonly entry: ReviewEntry;
  readonly element: HTMLLIElement;
  readonly lines: HTMLDivElement;
  readonly accept: HTMLButtonElement;
  readonly refuse: HTMLButtonElement;
  decision: Decision;
}

let words: Words = {};
let parts: readonly string[] = [];
let shown: Shown[] = [];

const word = (name: string, ...values: readonly (string | number)[]): string =>
  values.reduce<string>((text, value, at) => text.replace(`{${at}}`, String(value)), words[name] ?? name);

const byId = <E extends HTMLElement = HTMLElement>(id: string): E => document.getElementById(id) as E;

function make<K extends keyof HTMLElementTagNameMap>(tag: K, className: string, text = ''): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  if (className !== '') element.className = className;
  if (text !== '') element.textContent = text;
  return element;
}

function button(text: string, press: () => void, className = ''): HTMLButtonElement {
  const made = make('button', className, text);
  made.type = 'button';
  made.addEventListener('click', press);
  return made;
}

const linesOf = ({ lines }: Shown): ReviewLine[] =>
  [...lines.querySelectorAll<HTMLDivElement>('.line')].flatMap((row) => {
    const text = row.querySelector('input')?.value.trim() ?? '';
    const part = row.querySelector('select')?.value ?? '';
    return text === '' ? [] : [{ part, text }];
  });

const reviewed = (): Reviewed[] => shown.map((each) => ({ decision: each.decision, lines: linesOf(each) }));

function tally(): void {
  const count = (decision: Decision) => shown.filter((each) => each.decision === decision).length;
  byId('tally').textContent = word('tally', count('accepted'), count('refused'), count('open'));
}

function mark(each: Shown, decision: Decision): void {
  each.decision = decision;
  each.element.dataset.decision = decision;
  each.accept.setAttribute('aria-pressed', String(decision === 'accepted'));
  each.refuse.setAttribute('aria-pressed', String(decision === 'refused'));
}

/** Pressing what is chosen already opens the entry again. */
function decide(each: Shown, decision: Decision): void {
  mark(each, each.decision === decision ? 'open' : decision);
  changed();
}

function changed(): void {
  tally();
  tell({ type: 'kept', reviewed: reviewed() });
}

function partChoice(chosen: string): HTMLSelectElement {
  const select = make('select', '');
  select.setAttribute('aria-label', word('part'));
  for (const part of parts) {
    const option = make('option', '', part);
    option.value = part;
    option.selected = part === chosen;
    select.append(option);
  }
  return select;
}

function lineRow(each: Shown, at: number, { part, text }: ReviewLine): HTMLDivElement {
  const row = make('div', 'line');
  const input = make('input', '');
  const fault = make('span', 'fault');
  const select = partChoice(part);
  fault.id = `fault-${at}-${each.lines.childElementCount}`;
  input.value = text;
  input.spellcheck = false;
  input.setAttribute('aria-label', word('line', each.lines.childElementCount + 1));
  input.setAttribute('aria-describedby', fault.id);
  const look = (): void => {
    const line = [...each.lines.children].indexOf(row);
    tell({ type: 'look', entry: at, line, part: select.value, text: input.value });
    changed();
  };
  input.addEventListener('input', look);
  select.addEventListener('change', look);
  row.append(select, input, fault);
  return row;
}

function addLine(each: Shown, at: number): void {
  const last = each.lines.querySelector<HTMLSelectElement>('.line:last-child select')?.value;
  const row = lineRow(each, at, { part: last ?? 'strata', text: '' });
  each.lines.append(row);
  row.querySelector('input')?.focus();
}

function entryElement(entry: ReviewEntry, at: number, before: Reviewed | undefined): Shown {
  const element = make('li', 'entry');
  element.tabIndex = at === 0 ? 0 : -1;
  element.dataset.status = entry.status;
  const original = make('div', '');
  const heading = make('div', '');
  heading.id = `heading-${at}`;
  heading.append(make('span', 'number', word('original', entry.first)), make('span', 'status', word(entry.status)));
  const source = make('pre', 'source', entry.source.join('\n'));
  source.id = `source-${at}`;
  original.append(heading, source);
  element.setAttribute('aria-labelledby', `heading-${at} source-${at}`);
  element.setAttribute('role', 'listitem');
  const lines = make('div', 'lines');
  const each: Shown = {
    entry,
    element,
    lines,
    accept: button(word('accept'), () => decide(each, 'accepted')),
    refuse: button(word('refuse'), () => decide(each, 'refused')),
    decision: 'open',
  };
  for (const line of before?.lines ?? entry.lines) lines.append(lineRow(each, at, line));
  if (entry.lines.length === 0) original.append(make('div', 'number', word('commentOnly')));
  const right = make('div', '');
  const buttons = make('div', 'buttons');
  buttons.append(
    each.accept,
    each.refuse,
    button(word('addLine'), () => addLine(each, at)),
  );
  right.append(lines, buttons);
  element.append(original, right);
  if (entry.status !== 'understood') {
    const why = make('ul', 'why');
    why.append(...entry.why.map((text) => make('li', '', text)));
    element.append(why);
  }
  mark(each, before?.decision ?? 'open');
  element.addEventListener('focus', () => restrictTabStops(each));
  element.addEventListener('keydown', (event) => press(event, each));
  return each;
}

/** One entry at a time is reached by Tab; the arrows go on from it. */
function restrictTabStops(current: Shown): void {
  for (const each of shown) each.element.tabIndex = each === current ? 0 : -1;
}

function move(from: Shown, by: number): void {
  const next = shown[shown.indexOf(from) + by];
  next?.element.focus();
  next?.element.scrollIntoView({ block: 'nearest' });
}

const keys: Readonly<Record<string, (each: Shown) => void>> = {
  ArrowDown: (each) => move(each, 1),
  ArrowUp: (each) => move(each, -1),
  a: (each) => decide(each, 'accepted'),
  r: (each) => decide(each, 'refused'),
  e: (each) => {
    const input = each.lines.querySelector('input');
    if (input) input.focus();
    else addLine(each, shown.indexOf(each));
  },
};

function press(event: KeyboardEvent, each: Shown): void {
  if (event.key === 'Escape') {
    each.element.focus();
    return;
  }
  if (event.target !== each.element || event.ctrlKey || event.metaKey || event.altKey) return;
  const act = keys[event.key.length === 1 ? event.key.toLowerCase() : event.key];
  if (act === undefined) return;
  event.preventDefault();
  act(each);
}

function acceptUnderstood(): void {
  for (const each of shown) if (each.entry.status === 'understood' && each.decision === 'open') mark(each, 'accepted');
  changed();
}

function actions(canInsert: boolean): HTMLButtonElement[] {
  const write = (to: 'file' | 'cursor') => () => tell({ type: 'write', to, reviewed: reviewed() });
  return [
    button(word('acceptAll'), acceptUnderstood),
    button(word('makeLog'), write('file'), 'main'),
    ...(canInsert ? [button(word('insert'), write('cursor'))] : []),
  ];
}

function show(message: ToReview & { type: 'show' }): void {
  ({ words, parts } = message);
  byId('title').textContent = word('title');
  byId('keys').textContent = word('keys');
  byId('actions').setAttribute('aria-label', word('title'));
  byId('entries').setAttribute('aria-label', word('title'));
  byId('actions').replaceChildren(...actions(message.canInsert));
  byId('file-notes').replaceChildren(...message.notes.map((text) => make('li', '', text)));
  shown = message.entries.map((entry, at) => entryElement(entry, at, message.reviewed[at]));
  byId('entries').replaceChildren(...shown.map(({ element }) => element));
  tally();
  shown[0]?.element.focus();
}

function looked({ entry, line, says }: ToReview & { type: 'looked' }): void {
  const row = shown[entry]?.lines.children[line];
  const fault = row?.querySelector('.fault');
  if (fault) fault.textContent = says ?? '';
  row?.querySelector('input')?.setAttribute('aria-invalid', String(says !== null));
}

window.addEventListener('message', ({ data }: MessageEvent<ToReview>) => {
  const trouble = byId('trouble');
  if (data.type === 'show') show(data);
  else if (data.type === 'looked') looked(data);
  trouble.hidden = data.type !== 'trouble';
  if (data.type === 'trouble') trouble.textContent = data.message;
});
tell({ type: 'ready' });
