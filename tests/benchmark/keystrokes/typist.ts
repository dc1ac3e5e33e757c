import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

/** What stands in the editor. */
interface State {
  readonly text: string;
  readonly line: number;
  readonly character: number;
  readonly endLine: number;
  readonly endCharacter: number;
  readonly selected: string;
}

/** How two texts are held against each other: letter by letter, or whatever their blanks. */
export type Likeness = (text: string) => string;

/** What Tab would put in behind the cursor, around the value that is then typed. */
export interface Piece {
  readonly before: string;
  readonly after: string;
}

/** What Tab would put in, by the text and where the cursor stands; null where it has nothing to put in. */
export type PieceAt = (text: string, line: number, character: number) => Piece | null;

export interface Typist {
  readonly page: Page;
  readonly stateFile: string;
  readonly likeness: Likeness;
  /** Null where the notation's editor has no such help. */
  readonly pieceAt: PieceAt | null;
  keys: number;
  /** What each line took, getting to it included. */
  readonly perLine: number[];
}

/** Time after a key in which the editor has done what it does, in milliseconds. */
const settle = 45;
/** How long a person looks whether a list comes. */
const look = 260;
/** How long the list may take at the first letter of a word, on a slow machine too: keys are counted, not time. */
const patience = 900;

const pause = ({ page }: Typist, ms: number): Promise<void> => page.waitForTimeout(ms);

const nowhere: State = { text: '', line: 0, character: 0, endLine: 0, endCharacter: 0, selected: '' };

function told({ stateFile }: Typist): State {
  try {
    return JSON.parse(readFileSync(stateFile, 'utf8'));
  } catch {
    return nowhere;
  }
}

/** Where the window shows the cursor; the probe may be a moment behind it. */
async function shown({ page }: Typist): Promise<string> {
  return (
    (await page
      .locator('#status\\.editor\\.selection')
      .textContent({ timeout: 2000 })
      .catch(() => '')) ?? ''
  );
}

/** What stands in the editor once the probe has caught up with the window. */
async function stateOf(typist: Typist): Promise<State> {
  for (let tries = 0; tries < 60; tries += 1) {
    const state = told(typist);
    const [, line, column] = /Ln (\d+), Col (\d+)/.exec(await shown(typist)) ?? [];
    if (Number(line) === state.endLine + 1 && Number(column) === state.endCharacter + 1) return state;
    await pause(typist, 25);
  }
  return told(typist);
}

async function press(typist: Typist, key: string): Promise<void> {
  typist.keys += 1;
  await typist.page.keyboard.press(key);
  await pause(typist, settle);
}

async function type(typist: Typist, letter: string): Promise<void> {
  typist.keys += 1;
  await typist.page.keyboard.type(letter);
}

const listRows = '.suggest-widget.visible .monaco-list-row';

/** The names in the list from the one that Tab would take now on, as many as one sees; none where no list is open. */
async function offered({ page }: Typist, wait: number): Promise<readonly string[]> {
  try {
    await page.locator(`${listRows}.focused .label-name`).first().waitFor({ timeout: wait });
    return await page.locator(listRows).evaluateAll((rows) => {
      const place = (row: Element): number => Number(row.getAttribute('data-index'));
      const inOrder = [...rows].sort((a, b) => place(a) - place(b));
      return inOrder
        .slice(inOrder.findIndex(({ classList }) => classList.contains('focused')))
        .map((row) => row.querySelector('.label-name')?.textContent ?? '');
    });
  } catch {
    return [];
  }
}

/** The list once it stays as it is: with every letter it may be made anew. */
async function settledList(typist: Typist, wait: number): Promise<readonly string[]> {
  let labels = await offered(typist, wait);
  for (let tries = 0; tries < 5 && labels.length > 0; tries += 1) {
    await pause(typist, 2 * settle);
    const again = await offered(typist, settle);
    if (again.join('|') === labels.join('|')) return labels;
    labels = again;
  }
  return labels;
}

const lineOf = (state: State): string => state.text.split('\n')[state.line] ?? '';
const before = (state: State): string => lineOf(state).slice(0, state.character);
const behind = (state: State): string => lineOf(state).slice(state.character + state.selected.length);

/** What is still to be typed of a line: what the editor has put there already is not. Null where it put something else. */
function restOf({ likeness }: Typist, target: string, state: State): string | null {
  const written = likeness(before(state));
  for (let at = 0; at <= target.length; at += 1) if (likeness(target.slice(0, at)) === written) return target.slice(at);
  // A blank at its end is nothing that a line would have to lose.
  return likeness(target) === written.trimEnd() ? '' : null;
}

const words = /^[\s,'[]*(?:;|[^\s,:;\]']+)/;

/** How many letters of the line come with a name from the list: with a key of YAML, its colon and a blank. */
const lettersOf = (label: string, rest: string): number => label.length + (rest.startsWith(`${label}: `) ? 2 : 0);

/** True where what is still to be typed of it is more than the keys that go down to it and take it. */
const isWorth = (letters: number, typed: string, down: number): boolean => letters > typed.length + down + 1;

/** How many letters one types before giving up on the list. */
const mostLetters = 3;

/** Waits until the letters stand before the cursor: a slow machine takes keys in later than they are pressed. */
async function untilTyped(typist: Typist, letters: string): Promise<void> {
  for (let tries = 0; tries < 120; tries += 1) {
    if (before(told(typist)).endsWith(letters)) return;
    await pause(typist, 25);
  }
}

/** Waits until the editor has done what a key asked it to. */
async function untilChanged(typist: Typist, text: string): Promise<void> {
  for (let tries = 0; tries < 120 && told(typist).text === text; tries += 1) await pause(typist, 25);
}

/** Waits until the question mark that Tab has put in is selected. */
async function untilAsked(typist: Typist): Promise<void> {
  for (let tries = 0; tries < 120 && told(typist).selected !== '?'; tries += 1) await pause(typist, 25);
}

/** Types one word; takes it from the list where the list has it near the top and that is shorter. */
async function typeWord(typist: Typist, rest: string): Promise<void> {
  const [written] = words.exec(rest) ?? [rest.charAt(0)];
  // Where a snippet has a dash behind the cursor, one goes on to it.
  const dash = /^\s*-/.test(behind(told(typist))) ? written.indexOf('-', 1) : -1;
  const whole = dash > 0 ? written.slice(0, dash) : written;
  const lead = /^[\s,'[]*/.exec(whole)?.[0] ?? '';
  const word = whole.slice(lead.length);
  for (const letter of lead) await type(typist, letter);
  await untilTyped(typist, lead);
  const left = rest.slice(lead.length);
  const mayBeOffered = /(?:^|[\s;])$/.test(before(told(typist)));
  const letters = lettersOf(word, left);
  const looksFor = (typed: string): boolean => letters > 3 && typed.length <= mostLetters && isWorth(letters, typed, 0);
  if (mayBeOffered && looksFor('') && (await takes(typist, left, ''))) return;
  for (let at = 0; at < word.length; at += 1) {
    await type(typist, word.charAt(at));
    const typed = word.slice(0, at + 1);
    if (looksFor(typed) && /[\p{L}\d]/u.test(typed) && (await takes(typist, left, typed))) return;
  }
  await untilTyped(typist, word);
}

/** How far down a list one looks. */
const mostDown = 3;

const isDate = /^\d{4}-\d\d-\d\d$/;

/** As much of a date as says which one is meant: the day, where the list has one before it of the same month, else the month too. */
function dayOf(rest: string, labels: readonly string[]): string | null {
  const [date, month, day] = /^(\d{4}-\d\d)-(\d\d)/.exec(rest) ?? [];
  if (date === undefined || month === undefined || day === undefined) return null;
  const isNear = labels.some((label) => isDate.test(label) && label.startsWith(month) && label <= date);
  return isNear ? day : date.slice(5);
}

/** Types the day of a date that the list has further down or not yet, which brings it to the top. */
async function takesByDay(typist: Typist, rest: string, labels: readonly string[]): Promise<boolean> {
  const day = dayOf(rest, labels);
  if (day === null) return false;
  for (const letter of day) await type(typist, letter);
  await untilTyped(typist, day);
  await pause(typist, look);
  if (await takes(typist, rest, day)) return true;
  for (const _ of day) await press(typist, 'Backspace');
  return false;
}

/** Takes what the list has near its top where the line goes on just so. */
async function takes(typist: Typist, rest: string, typed: string): Promise<boolean> {
  const goesOn = (label: string): boolean => rest.startsWith(label) && !/^[\p{L}\d]/u.test(rest.slice(label.length));
  const labels = await settledList(typist, typed.length === 1 ? patience : look);
  const down = labels.findIndex((label) => label !== '' && goesOn(label));
  if (down < 0) return typed === '' && labels.some((label) => isDate.test(label)) && takesByDay(typist, rest, labels);
  if (down > 1 && typed === '' && (await takesByDay(typist, rest, labels))) return true;
  if (down > mostDown || !isWorth(lettersOf(labels[down] ?? '', rest), typed, down)) return false;
  const { text } = told(typist);
  for (let at = 0; at < down; at += 1) await press(typist, 'ArrowDown');
  await press(typist, 'Tab');
  await untilChanged(typist, text);
  return true;
}

const isSnippetOpen = ({ page }: Typist): Promise<boolean> =>
  page
    .locator('.snippet-placeholder, .finish-snippet-placeholder')
    .first()
    .waitFor({ state: 'attached', timeout: look })
    .then(
      () => true,
      () => false,
    );

/** Past what a snippet has put behind the cursor, where the line goes on with it. */
async function pastTheSame(typist: Typist, rest: string): Promise<boolean> {
  const after = behind(await stateOf(typist));
  if (after === ' ' && rest.startsWith(' ') && (await isSnippetOpen(typist))) {
    await press(typist, 'Tab');
    return true;
  }
  const same =
    after.trim() !== '' &&
    typist.likeness(rest).startsWith(typist.likeness(after.split('?')[0] ?? '')) &&
    after.trim() !== '?';
  if (!same || typist.likeness(after.split('?')[0] ?? '') === '') return false;
  await press(typist, (await isSnippetOpen(typist)) ? 'Tab' : 'End');
  return true;
}

async function clearBehind(typist: Typist): Promise<void> {
  if (behind(await stateOf(typist)).trim() === '') return;
  await press(typist, 'Control+Shift+End');
  await press(typist, 'Delete');
}

/** What the editor has put there and the line does not begin with: Enter takes a waiting dash away, Backspace the rest. */
async function takeBack(typist: Typist, state: State): Promise<void> {
  const waits = lineOf(state).trim() === '-';
  await press(typist, waits ? 'Enter' : 'Backspace');
  await untilChanged(typist, state.text);
  if (waits) await pause(typist, 2 * look);
}

/** True where the line is written and the editor has begun the next one by itself. */
function isAhead({ likeness }: Typist, target: string, next: string | null, state: State): boolean {
  const above = state.text.split('\n')[state.line - 1] ?? '';
  const begun = before(state);
  const goesOn = begun.trim() === '' || (next !== null && likeness(next).startsWith(likeness(begun)));
  return goesOn && likeness(above.trimEnd()) === likeness(target);
}

const figure = '([~<>+]?[\\d.]+\\??(?: ?x ?[\\d.]+(?: kg)?)?)';
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** The value with which a line goes on where Tab puts in what stands around it; null where that would save nothing. */
function valueIn({ before, after }: Piece, rest: string): string | null {
  const [, value] = new RegExp(`^[\\s,]+${escaped(before)}${figure}${escaped(after)}(?=[\\s,]|$)`).exec(rest) ?? [];
  return value !== undefined && before.length + after.length > 1 ? value : null;
}

/** Closes a list that would take the next Tab; one that is on its way is waited for. */
async function closeList(typist: Typist): Promise<void> {
  if ((await offered(typist, look)).length > 0) await press(typist, 'Escape');
}

/** Lets Tab put in what stands around the next value, and types the value; or go past a unit to the next item. */
async function takesPiece(typist: Typist, rest: string, state: State): Promise<boolean> {
  const unit = behind(state);
  const left = rest.startsWith(unit) ? rest.slice(unit.length) : null;
  const piece = left === null ? null : (typist.pieceAt?.(state.text, state.line, state.character) ?? null);
  if (piece === null || left === null) return false;
  const value = valueIn(piece, left);
  const goesPast = unit.trim() !== '' && /^[\s,]/.test(left) && piece.before + piece.after === '';
  if (value === null && !goesPast) return false;
  await closeList(typist);
  await press(typist, 'Tab');
  if (value === null) {
    await untilChanged(typist, state.text);
    await pause(typist, look);
    return true;
  }
  await untilAsked(typist);
  for (const letter of value) await type(typist, letter);
  await untilTyped(typist, value);
  return true;
}

/** True where all that is still to come stands behind the cursor, and Enter goes past it. */
const isDone = ({ likeness, pieceAt }: Typist, rest: string, state: State): boolean =>
  likeness(rest) === '' || (pieceAt !== null && likeness(rest) === likeness(behind(state).trimEnd()));

async function typeLine(typist: Typist, target: string, next: string | null): Promise<void> {
  for (let step = 0; step < 150; step += 1) {
    await pause(typist, settle);
    const state = await stateOf(typist);
    if (step > 0 && isAhead(typist, target, next, state)) return;
    const rest = restOf(typist, target, state);
    if (rest === null) await takeBack(typist, state);
    else if (typist.likeness(rest) === '') return clearBehind(typist);
    else if (isDone(typist, rest, state)) return;
    else if (await takesPiece(typist, rest, state)) continue;
    else if (!(await pastTheSame(typist, rest))) await typeWord(typist, rest);
  }
  throw new Error(`cannot get past ${JSON.stringify(target)} with ${JSON.stringify(lineOf(await stateOf(typist)))}`);
}

/** On to the next line: where a snippet has begun it already, there; else a new one. */
async function toNextLine(typist: Typist, done: string, next: string): Promise<void> {
  const state = await stateOf(typist);
  if (lineOf(state).trim() === '' || isAhead(typist, done, next, state)) return;
  const below = state.text.split('\n')[state.line + 1];
  const begun =
    below !== undefined &&
    below.trim() !== '' &&
    typist.likeness(next).startsWith(typist.likeness(below.split('?')[0] ?? ''));
  if (!begun) {
    await press(typist, 'Enter');
    await untilChanged(typist, state.text);
    // With a list open, Enter may have taken a word from it.
    if ((await stateOf(typist)).line === state.line) await press(typist, 'Enter');
    await pause(typist, look);
    return;
  }
  await press(typist, (await isSnippetOpen(typist)) ? 'Tab' : 'ArrowDown');
  if ((await stateOf(typist)).line === state.line) await press(typist, 'ArrowDown');
  await press(typist, 'End');
}

/** Types a text as one who knows it does, with every help that the editor gives; counts the keys. */
export async function typeText(typist: Typist, lines: readonly string[]): Promise<State> {
  for (const [at, line] of lines.entries()) {
    const before = typist.keys;
    if (at > 0) await toNextLine(typist, lines[at - 1] ?? '', line);
    await typeLine(typist, line, lines[at + 1] ?? null);
    typist.perLine.push(typist.keys - before);
  }
  await pause(typist, 300);
  return stateOf(typist);
}
