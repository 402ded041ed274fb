import { useEffect, useMemo, useState } from 'preact/hooks';
import { lengthWords } from '../../core/lengths';
import { bareName } from '../../core/mounts';
import { length, minus } from '../../core/space';
import { measured, type Thing } from '../../core/things';
import type { AnswerDocument } from '../../core/wire';
import type { Overlay } from './exhibit';
import { measureOverlay } from './ghost';

/** Ends of what is measured; an end that is not chosen yet is none. */
type Ends = readonly [string | undefined, string | undefined];
const NO_ENDS: Ends = [undefined, undefined];

interface Wanted {
    things: readonly Thing[];
    /** The part that the page has chosen. */
    selected: string | undefined;
    fields: AnswerDocument['fields'];
    onShow: (part: string) => void;
}

/** What is pointed at in space, and how far from what. */
export interface Pointing {
    readonly things: readonly Thing[];
    readonly fields: AnswerDocument['fields'];
    readonly current: string | undefined;
    readonly thing: Thing | undefined;
    readonly measuring: boolean;
    readonly ends: Ends;
    /** The way that is measured. */
    readonly overlay: Overlay | undefined;
    /** By pointer or by name: while one measures, the last two are measured. */
    readonly choose: (to: Thing) => void;
    /** By keys: while one measures, from where that began. */
    readonly walk: (to: Thing) => void;
    readonly measure: (on: boolean) => void;
    /** From the thing that is chosen to whatever is chosen next. */
    readonly measureFromHere: () => void;
    readonly setEnds: (from: string | undefined, to: string | undefined) => void;
}

export function usePointing({ things, selected, fields, onShow }: Wanted): Pointing {
    const [own, setOwn] = useState<Thing>();
    const [measuring, setMeasuring] = useState(false);
    const [ends, setEnds] = useState(NO_ENDS);
    useEffect(() => {
        // What was chosen here holds until another part is chosen elsewhere.
        setOwn(before => (before?.part === bareName(selected ?? '') ? before : undefined));
    }, [selected]);
    const current = own?.id ?? selected;
    const [from, to] = ends.map(end => things.find(each => each.id === end));
    const overlay = useMemo(() => {
        const way = from && to && measured(from, to);
        return way && measureOverlay(way, lengthWords(length(minus(way.to, way.from)), fields));
    }, [from, to, fields]);
    const taken = (thing: Thing, first: string | undefined): void => {
        setOwn(thing);
        if (measuring) {
            setEnds([first, thing.id]);
        }
        if (thing.part !== undefined) {
            onShow(thing.part);
        }
    };
    return {
        things,
        fields,
        current,
        thing: things.find(each => each.id === current),
        measuring,
        ends,
        overlay,
        choose(thing) {
            taken(thing, ends[1] ?? ends[0] ?? current);
        },
        walk(thing) {
            taken(thing, ends[0] ?? current);
        },
        measure(on) {
            setMeasuring(on);
            setEnds(NO_ENDS);
        },
        measureFromHere() {
            setMeasuring(true);
            setEnds([current, undefined]);
        },
        setEnds(from, to) {
            setEnds([from, to]);
        },
    };
}
