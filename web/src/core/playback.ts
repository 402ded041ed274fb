import { axisOf, numeral, shownOn, type Axis } from './axis';
import { point, type Point } from './space';
import type { AnswerDocument, Playback, Track } from './wire';

/** How far a part has gone from the coldest start to its limit; each has its word and its hatch. */
export type Level = 'cool' | 'warm' | 'near' | 'over';

const LEVELS: readonly (readonly [number, Level])[] = [
    [1, 'over'],
    [0.8, 'near'],
    [0.4, 'warm'],
];

export const LEVEL_WORDS: Readonly<Record<Level, string>> = {
    cool: 'cool',
    warm: 'warm',
    near: 'near its limit',
    over: 'at or over its limit',
};

/** What is drawn once: tracks of one part at one place share a mark, which shows the worst of them. */
export interface Mark {
    readonly part: string;
    readonly from: Point;
    readonly to: Point;
    readonly tracks: readonly Track[];
}

export interface Played {
    readonly times: readonly number[];
    readonly x: Axis;
    readonly y: Axis;
    readonly marks: readonly Mark[];
    readonly tracks: readonly Track[];
    /** The coldest start of all, SI: where every way begins. */
    readonly cold: number;
    /** The moment at which a part is farthest on its way. */
    readonly worst: number;
}

function place([forward, right, up]: readonly [number, number, number]): Point {
    return point(forward, right, up);
}

export function playedOf(playback: Playback, fields: AnswerDocument['fields']): Played {
    const { times, tracks } = playback;
    const cold = Math.min(...tracks.map(track => track.values[0] ?? Infinity));
    const marks = new Map<string, Mark>();
    for (const track of tracks) {
        const key = JSON.stringify([track.part, track.from, track.to]);
        const mark = marks.get(key);
        marks.set(key, {
            part: track.part,
            from: place(track.from),
            to: place(track.to),
            tracks: [...(mark?.tracks ?? []), track],
        });
    }
    let worst = 0;
    let most = -Infinity;
    times.forEach((_, k) => {
        for (const track of tracks) {
            const share = shareAt(track, k, cold);
            if (share > most) {
                most = share;
                worst = k;
            }
        }
    });
    const { x, y } = playback;
    return {
        times,
        x: axisOf(fields[x.field], x.field, times),
        y: axisOf(
            fields[y.field],
            y.field,
            tracks.flatMap(track => [...track.values, track.limit]),
        ),
        marks: [...marks.values()],
        tracks,
        cold,
        worst,
    };
}

/** How much of the way from the coldest start to its limit a part has gone at a moment. */
export function shareAt(track: Track, moment: number, cold: number): number {
    const value = track.values[moment] ?? cold;
    return track.limit > cold
        ? (value - cold) / (track.limit - cold)
        : value >= track.limit
          ? 1
          : 0;
}

export function levelOf(share: number): Level {
    return LEVELS.find(([least]) => share >= least)?.[1] ?? 'cool';
}

/** The worst of what a mark shows. */
export function worstOf(mark: Mark, moment: number, cold: number): Track | undefined {
    return nearest(mark.tracks, moment, cold)[0];
}

/** Tracks, the farthest on their way first. */
export function nearest(tracks: readonly Track[], moment: number, cold: number): Track[] {
    return tracks
        .map(track => ({ track, share: shareAt(track, moment, cold) }))
        .sort((a, b) => b.share - a.share)
        .map(({ track }) => track);
}

/** The farthest of its kind, and how many more of that kind are at the same level. */
export interface Ahead {
    readonly track: Track;
    readonly level: Level;
    readonly more: number;
}

/** The farthest part of each kind: a rig has dozens of wires that warm alike. */
export function aheadOf(played: Played, moment: number): Ahead[] {
    const ahead = new Map<string, Ahead>();
    for (const track of nearest(played.tracks, moment, played.cold)) {
        const level = levelOf(shareAt(track, moment, played.cold));
        const first = ahead.get(track.kind);
        if (!first) {
            ahead.set(track.kind, { track, level, more: 0 });
        } else if (first.level === level) {
            ahead.set(track.kind, { ...first, more: first.more + 1 });
        }
    }
    return [...ahead.values()];
}

/** A value as the axis shows it, with its unit. */
export function textOn(axis: Axis, si: number): string {
    const number = numeral(shownOn(axis, si), axis.step / 100);
    return axis.unit ? `${number}\u00a0${axis.unit}` : number;
}

/** "left.1, windings": what a track is called. */
export function trackName(track: Track): string {
    return `${track.part}, ${track.kind}`;
}
