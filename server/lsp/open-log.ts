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
import { sameSettings } from './settings.ts';

/** One log that is open in the editor: its text as of the last change, and what was last known of it. */
export class OpenLog {
  readonly uri: string;
  readonly #today: () => string;
  #version: number;
  #text: LineText;
  #settings: Settings;
  #shows: Shows;
  #snapshot: Snapshot | null = null;
  #analysedWith: Settings | null = null;
  #unchanged: Unchanged | null = null;

  constructor(uri: string, version: number, text: string, settings: Settings, shows: Shows, today: () => string) {
    this.uri = uri;
    this.#today = today;
    this.#version = version;
    this.#text = lineTextOf(text);
    this.#settings = settings;
    this.#shows = shows;
  }

  get version(): number {
    return this.#version;
  }

  get shows(): Shows {
    return this.#shows;
  }

  set shows(shows: Shows) {
    this.#shows = shows;
  }

  /** What it is analysed with. */
  get settings(): Settings {
    return this.#settings;
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
  setSettings(settings: Settings): boolean {
    const same = sameSettings(settings, this.#settings);
    if (!same) this.#settings = settings;
    return !same;
  }

  /** What is known of the text as it stands now. */
  snapshot(): Snapshot {
    const today = this.#today();
    if (this.#settings.today !== today) this.#settings = { ...this.#settings, today };
    const settings = this.#settings;
    const held = this.#snapshot;
    const sameBasis = held !== null && settings === this.#analysedWith;
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
