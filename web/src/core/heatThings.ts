import type { Level, Mark, Played } from './playback';
import { levelOf, shareAt, worstOf } from './playback';
import type { DrawnFan, Scene } from './scene';
import { length, minus } from './space';
import { HALF_M, type Thing } from './things';

export type Warm =
    | { readonly kind: 'fan'; readonly mark: Mark; readonly fan: DrawnFan }
    | { readonly kind: 'pack' | 'wire' | 'dot'; readonly mark: Mark };

/** Half of how thick a wire, and a joint, fuse or pole is drawn, m; hot ones thicker. */
const WIRE_M: Readonly<Record<Level, number>> = {
    cool: 0.002,
    warm: 0.003,
    near: 0.0045,
    over: 0.006,
};
const DOT_M: Readonly<Record<Level, number>> = {
    cool: 0.006,
    warm: 0.007,
    near: 0.009,
    over: 0.011,
};

export function wireM(level: Level): number {
    return WIRE_M[level];
}

export function dotM(level: Level): number {
    return DOT_M[level];
}

/** What each mark of a playback is in space. */
export function warmOf(played: Played, scene: Scene): Warm[] {
    return played.marks.map(mark => {
        if (length(minus(mark.to, mark.from)) > 0) {
            return { kind: 'wire', mark };
        }
        const fan = scene.fans.find(
            each => mark.part === each.id || mark.part.startsWith(`${each.id}.`),
        );
        if (fan) {
            return { kind: 'fan', mark, fan };
        }
        const pack = mark.tracks.some(track => track.kind === 'cells');
        return { kind: pack ? 'pack' : 'dot', mark };
    });
}

export function levelsAt(warm: readonly Warm[], played: Played, moment: number): Level[] {
    return warm.map(({ mark }) => {
        const worst = worstOf(mark, moment, played.cold);
        return worst ? levelOf(shareAt(worst, moment, played.cold)) : 'cool';
    });
}

/** Fans, packs, runs and joints of a playback as things that can be pointed at. */
export function warmThings(warm: readonly Warm[]): Thing[] {
    const seen = new Map<string, number>();
    return warm.map(each => {
        const { mark } = each;
        const before = seen.get(mark.part) ?? 0;
        seen.set(mark.part, before + 1);
        const radiusM =
            each.kind === 'fan'
                ? each.fan.tipM / 2
                : each.kind === 'pack'
                  ? HALF_M.pack
                  : each.kind === 'wire'
                    ? WIRE_M.over
                    : DOT_M.over;
        return {
            id: before > 0 ? `${mark.part} (${before + 1})` : mark.part,
            what: whatOf(each),
            from: mark.from,
            to: mark.to,
            radiusM,
            part: mark.part,
        };
    });
}

function whatOf({ kind, mark }: Warm): string {
    switch (kind) {
        case 'wire':
            return 'run';
        case 'dot':
            return mark.tracks[0]?.kind ?? 'part';
        case 'fan':
        case 'pack':
            return kind;
    }
}
