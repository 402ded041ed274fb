import type { AnswerDocument, Drawing, Moved, Part, Place, Section, Units } from '../core/wire';

// What the views ask of the pictures, and nothing more. Pictures keep no state of the rig.

/** A part by its id: what is to be shown, in the picture and in the file. */
export type Show = (part: string) => void;

export interface PictureProps {
    section: Section;
    /** The rig as another answer draws it: what is played moves on it. */
    rig?: Drawing | undefined;
    fields: AnswerDocument['fields'];
    units: Units;
    /** What the file saved is to be called, without ending. */
    fileName: string;
    /** The part that is selected, to be marked wherever it occurs. */
    selected?: string | undefined;
    onShow: Show;
    /** Parts that a finding names: marked with a second rim. */
    marked?: readonly string[] | undefined;
    /** The rig has changed since: drawn pale, and said in words. */
    stale?: boolean | undefined;
    /** The failure that is played, by the name of its line in the matrix. */
    chosen?: string | undefined;
    onChoose?: ((failure: string) => void) | undefined;
}

/** A drag of one part, from its first move to its end. */
export interface Drag {
    part: string;
    to: Place;
    /** 'over': dropped here; 'off': given up, the part is to stand where it stood. */
    phase: 'moving' | 'over' | 'off';
    snap: boolean;
    twin: boolean;
    /** Whether all of its group move by the same; not where it is absent. */
    whole?: boolean;
}

export interface RigProps {
    drawing: Drawing;
    fields: AnswerDocument['fields'];
    units: Units;
    fileName: string;
    /** What can be moved, and why not. */
    parts: Part[];
    selected?: string | undefined;
    onShow: Show;
    /**
     * 'moving' comes at pointer rate, the latest place only: the next one waits until what this one
     * returned is settled. Return the promise of the nominal answer, and moves never queue up.
     */
    onDrag: (drag: Drag) => void | Promise<void>;
    /** What the server answered to the last move: the ghost stands there while the hand is near. */
    moved?: Moved | undefined;
    /** Lines of the last nominal answer ("leans back with 15 °/s²"), shown while dragging. */
    told?: readonly string[] | undefined;
    /** Length of a snap step and of a step by arrow key, m; 5 mm or a quarter of an inch if absent. */
    stepM?: number | undefined;
    /** Sections of any answers: what their tables say of a part is told with it. */
    about?: readonly Section[] | undefined;
    marked?: readonly string[] | undefined;
    stale?: boolean | undefined;
}
