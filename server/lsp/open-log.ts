import { analyse, update } from '../analysis/index.ts';
import type { Settings, Snapshot } from '../analysis/snapshot.ts';
import type { Shows } from '../features/shows.ts';
import {
  applyChange,
  editSince,
  type LineText,
  lineTextOf,
  type TextChange,
  type Unchanged,
  unchangedAfter,
} from './documents.ts';
import { sameSettings, type UserSettings } from './settings.ts';

/** One log that is open in the editor: its text as of the last change, and what was last known of it. */
export class OpenLog {
  readonly uri: string;
  readonly #today: () => string;
  #version: number;
  #text: LineText;
  #settings: UserSettings;
  #snapshot: Snapshot | null = null;
  #analysedWith: Settings | null = null;
  #unchanged: Unchanged | null = null;

  constructor(uri: string, version: number, text: string, settings: UserSettings, today: () => string) {
    this.uri = uri;
    this.#version = version;
    this.#text = lineTextOf(text);
    this.#settings = settings;
    this.#today = today;
  }

  get version(): number {
    return this.#version;
  }

  get shows(): Shows {
    return this.#settings.shows;
  }

  get text(): LineText {
    return this.#text;
  }

  change(version: number, changes: readonly TextChange[]): void {
    this.#version = version;
    for (const change of changes) {
      const length = this.#text.lines.length;
      const { text, edit } = applyChange(this.#text, change);
      this.#unchanged = unchangedAfter(this.#unchanged, edit, length);
      this.#text = text;
    }
  }

  /** True where the settings are others than before. */
  setSettings(settings: UserSettings): boolean {
    const same = sameSettings(settings, this.#settings);
    if (!same) this.#settings = settings;
    return !same;
  }

  /** What is known of the text as it stands now. */
  snapshot(): Snapshot {
    const settings = { ...this.#settings, today: this.#today() };
    const held = this.#snapshot;
    const sameBasis = held !== null && JSON.stringify(settings) === JSON.stringify(this.#analysedWith);
    if (held !== null && sameBasis && this.#unchanged === null && held.version === this.#version) return held;
    const fresh = held !== null && sameBasis ? this.#updated(held, settings) : this.#analysed(settings);
    this.#snapshot = fresh;
    this.#analysedWith = settings;
    this.#unchanged = null;
    return fresh;
  }

  #analysed(settings: Settings): Snapshot {
    return analyse(this.#text.lines, settings, this.#version);
  }

  #updated(held: Snapshot, settings: Settings): Snapshot {
    const { lines } = this.#text;
    const unchanged = this.#unchanged ?? { head: lines.length, foot: 0 };
    return update(held, editSince(unchanged, held.lines.length, lines), settings, this.#version);
  }
}
