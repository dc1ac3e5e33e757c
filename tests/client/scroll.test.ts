import { describe, expect, test } from 'vitest';
import { ScrollEcho } from '../../client/preview/scroll-echo.ts';
import { Lead } from '../../client/webview/lead.ts';

/* Times in milliseconds from an hour ago: what is decided must not hang on what the clock says. */
const now = 3_600_000;

describe('a scroll of the text', () => {
  const putTo = (line: number): ScrollEcho => {
    const echo = new ScrollEcho();
    echo.put(line, now);
    return echo;
  };

  test('is the reader’s as long as the page has put it nowhere', () => {
    expect(new ScrollEcho().isEcho(0, now)).toBe(false);
  });

  test('is an echo at once, wherever the text can get to: short of the line at its end, under lines that stick', () => {
    for (const top of [40, 37, 12]) expect(putTo(40).isEcho(top, now + 80)).toBe(true);
  });

  test('that comes late is an echo where it goes to the line, or stands under lines that stick to the top', () => {
    for (const top of [40, 36, 41]) expect(putTo(40).isEcho(top, now + 4000)).toBe(true);
    for (const top of [42, 34, 0]) expect(putTo(40).isEcho(top, now + 4000)).toBe(false);
  });

  test('is an echo still when a lens comes or goes above the line', () => {
    const echo = putTo(40);
    expect([38, 37, 38].map((top, n) => echo.isEcho(top, now + 100 + n * 2000))).toEqual([true, true, true]);
  });

  test('by a hand is told, and all after it: the wheel goes up to the top of the text', () => {
    const echo = putTo(40);
    expect(echo.isEcho(38, now + 100)).toBe(true);
    const tops = [35, 38, 20, 3, 0];
    expect(tops.map((top, n) => echo.isEcho(top, now + 900 + n * 20))).toEqual(tops.map(() => false));
  });

  test('is an echo again when the page puts it elsewhere', () => {
    const echo = putTo(40);
    expect(echo.isEcho(0, now + 900)).toBe(false);
    echo.put(12, now + 1000);
    expect(echo.isEcho(10, now + 1100)).toBe(true);
  });

  test('is an echo as long as the page goes on scrolling', () => {
    const echo = new ScrollEcho();
    for (let n = 0; n < 100; n++) {
      echo.put(n, now + n * 100);
      expect(echo.isEcho(Math.max(0, n - 9), now + n * 100 + 90)).toBe(true);
    }
  });
});

describe('a scroll of the page', () => {
  test('is no one’s where no hand is at it: the text, the cursor or a redrawing moved it', () => {
    expect(new Lead().scrolls(now)).toBe(false);
  });

  test('is the reader’s from the turn of the wheel for as long as it goes on, and not after', () => {
    const lead = new Lead();
    lead.act(now);
    for (let at = now; at < now + 5000; at += 900) expect(lead.scrolls(at)).toBe(true);
    expect(lead.scrolls(now + 9000)).toBe(false);
  });

  test('is the text’s once the text is scrolled, until a hand is at the page again', () => {
    const lead = new Lead();
    lead.act(now);
    lead.follow();
    expect(lead.scrolls(now + 10)).toBe(false);
    lead.act(now + 20);
    expect(lead.scrolls(now + 30)).toBe(true);
  });

  test('is the reader’s as long as they hold the scroll bar, however still', () => {
    const lead = new Lead();
    lead.hold();
    lead.act(now);
    expect(lead.scrolls(now + 60_000)).toBe(true);
    lead.letGo(now + 60_001);
    expect([lead.scrolls(now + 60_500), lead.scrolls(now + 70_000)]).toEqual([true, false]);
  });

  test('is not led by a hand that only passes over the page', () => {
    const lead = new Lead();
    lead.letGo(now);
    expect(lead.scrolls(now + 1)).toBe(false);
  });
});
