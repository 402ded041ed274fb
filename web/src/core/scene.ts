import { ORIGIN, point, type Point } from './space';
import type { Drawing, Table, Value } from './wire';

export interface DrawnFan {
    readonly id: string;
    readonly rightHand: boolean;
    readonly at: Point;
    readonly tipM: number;
    readonly thrust: Value | undefined;
    readonly thrustN: number;
    /** Unit vector of its thrust. */
    readonly push: Point;
}
export interface DrawnLimb {
    readonly name: string;
    readonly from: Point;
    readonly to: Point;
}
export interface DrawnPart {
    readonly id: string;
    readonly kind: 'pack' | 'part' | 'mount';
    readonly at: Point;
}
export interface DrawnLine {
    readonly force: Value | undefined;
    readonly at: Point;
    readonly along: Point;
}

/** How wide and how long a jet is drawn, m; against the thrust of its fan. */
export interface DrawnJet {
    readonly fan: string;
    readonly exitM: number;
    readonly coreM: number;
    readonly coreWideM: number;
    readonly longM: number;
    readonly wideM: number;
}
/** One thing that one jet meets. */
export interface DrawnStrike {
    readonly fan: string;
    readonly struck: string;
    readonly at: Point;
    readonly distance: Value | undefined;
    readonly share: Value | undefined;
}

/** A rig in space as an answer tells it. A layer that an answer lacks draws nothing. */
export interface Scene {
    readonly fans: readonly DrawnFan[];
    readonly limbs: readonly DrawnLimb[];
    readonly parts: readonly DrawnPart[];
    readonly centre: Point | undefined;
    readonly lift: DrawnLine | undefined;
    readonly jets: readonly DrawnJet[];
    readonly strikes: readonly DrawnStrike[];
}

export const NO_SCENE: Scene = {
    fans: [],
    limbs: [],
    parts: [],
    centre: undefined,
    lift: undefined,
    jets: [],
    strikes: [],
};

class Row {
    constructor(
        private readonly table: Table,
        private readonly values: readonly Value[],
    ) {}

    value(field: string): Value | undefined {
        return this.values[this.table.columns.indexOf(field)];
    }

    words(field: string): string {
        return this.value(field)?.text ?? '';
    }

    si(field: string): number {
        return this.value(field)?.si ?? 0;
    }

    point(kind: string): Point {
        return point(this.si(`${kind}-forward`), this.si(`${kind}-right`), this.si(`${kind}-up`));
    }
}

function kindOf(words: string): DrawnPart['kind'] {
    return words === 'pack' ? 'pack' : 'part';
}

export function sceneOf(drawing: Drawing): Scene {
    const fans: DrawnFan[] = [];
    const limbs: DrawnLimb[] = [];
    const parts: DrawnPart[] = [];
    const jets: DrawnJet[] = [];
    const strikes: DrawnStrike[] = [];
    let centre: Point | undefined;
    let lift: DrawnLine | undefined;
    for (const layer of drawing.layers) {
        for (const values of layer.rows) {
            const row = new Row(layer, values);
            const at = row.point('place');
            switch (layer.id) {
                case 'drawn-fans':
                    fans.push({
                        id: row.words('part'),
                        rightHand: row.words('spin') === 'right-hand',
                        at,
                        tipM: row.si('tip-diameter'),
                        thrust: row.value('fan-thrust-at-lift-off'),
                        thrustN: row.si('fan-thrust-at-lift-off'),
                        push: row.point('push'),
                    });
                    break;
                case 'drawn-wearer':
                    limbs.push({ name: row.words('segment'), from: at, to: row.point('end') });
                    break;
                case 'drawn-parts':
                    parts.push({ id: row.words('part'), kind: kindOf(row.words('part-kind')), at });
                    break;
                case 'drawn-mounts':
                    parts.push({ id: row.words('part'), kind: 'mount', at });
                    break;
                case 'drawn-centre':
                    centre = at;
                    break;
                case 'drawn-lift':
                    lift = { force: row.value('lift-at-lift-off'), at, along: row.point('push') };
                    break;
                case 'drawn-jets':
                    jets.push({
                        fan: row.words('part'),
                        exitM: row.si('jet-exit-diameter'),
                        coreM: row.si('jet-core-length'),
                        coreWideM: row.si('jet-core-diameter'),
                        longM: row.si('jet-drawn-length'),
                        wideM: row.si('jet-drawn-diameter'),
                    });
                    break;
                case 'drawn-strikes':
                    strikes.push({
                        fan: row.words('part'),
                        struck: row.words('jet-struck'),
                        at,
                        distance: row.value('jet-distance'),
                        share: row.value('jet-momentum-share'),
                    });
                    break;
                default: // a layer of a later version: it stands in the table
            }
        }
    }
    return { fans, limbs, parts, centre, lift, jets, strikes };
}

/** Thrust over that of the strongest fan, 0 to 1. */
export function share(scene: Scene, fan: DrawnFan): number {
    const most = Math.max(0, ...scene.fans.map(other => other.thrustN));
    return most > 0 ? Math.max(0, fan.thrustN) / most : 0;
}

/** Length of the arrow of the strongest fan over twice the reach of the rig. */
const ARROW_SHARE = 0.13;

/** Length of the arrow of the strongest fan, m. */
export function arrowM(scene: Scene): number {
    let reach = 0;
    for (const end of [...scene.fans.map(fan => fan.at), ...scene.limbs.map(limb => limb.to)]) {
        reach = Math.max(reach, Math.hypot(end.forward, end.right, end.up));
    }
    return Math.max(0.05, ARROW_SHARE * 2 * reach);
}

/** How thick a segment is drawn, m. */
export function thickM(limb: string): number {
    switch (limb.replace(/^(left|right) /, '')) {
        case 'head':
            return 0.15;
        case 'trunk':
            return 0.24;
        case 'thigh':
            return 0.13;
        case 'upper arm':
        case 'shank':
            return 0.09;
        case 'hand':
            return 0.05;
        default:
            return 0.07;
    }
}

/** Where a part stands on the drawing, if it is drawn. */
export function placeOf(scene: Scene, part: string): Point | undefined {
    return (
        scene.fans.find(fan => fan.id === part)?.at ??
        scene.parts.find(other => other.id === part)?.at
    );
}

/** Points that must be seen: rims of fans, tips of arrows, ends of limbs, parts. */
export function corners(scene: Scene): Point[] {
    const all: Point[] = [];
    const arrow = arrowM(scene);
    const around = (at: Point, r: number): void => {
        all.push(point(at.forward + r, at.right + r, at.up));
        all.push(point(at.forward - r, at.right - r, at.up));
    };
    for (const fan of scene.fans) {
        around(fan.at, fan.tipM / 2);
        const far = arrow * share(scene, fan);
        all.push(
            point(
                fan.at.forward + far * fan.push.forward,
                fan.at.right + far * fan.push.right,
                fan.at.up + far * fan.push.up,
            ),
        );
    }
    for (const limb of scene.limbs) {
        const half = limb.name === 'head' ? 0.1 : 0.05;
        around(limb.from, half);
        around(limb.to, half);
    }
    for (const part of scene.parts) {
        all.push(part.at);
    }
    if (scene.centre) {
        all.push(scene.centre);
    }
    return all.length > 0 ? all : [ORIGIN];
}
