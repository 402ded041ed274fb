import { computed, signal, type Signal } from '@preact/signals';
import { Latest } from '../../core/latest';
import { isSame, moved, within, zoomed, type Span } from '../../core/span';
import { envelopeOf, type Envelope } from '../../core/strips';
import type { BesideSource, RawSource } from '../../core/samples';
import type { Stretch } from '../../core/wire';

/** Wider pictures ask for no more. */
const MOST_PIXELS = 2_000;

export type Channels = ReadonlyMap<string, Envelope>;

/** All that a strip is drawn from. */
export interface View {
    readonly span: Span;
    readonly width: number;
    readonly raw: Channels;
    readonly other: Channels;
}

/** What of a recording is looked at: the stretch of time, the moment, and the samples that show it. */
export class Looking {
    readonly span;
    readonly cursor;
    readonly raw = signal<Channels>(new Map());
    readonly other = signal<Channels>(new Map());
    /** Of what is drawn on, pixels. */
    readonly width = signal(700);
    readonly view = computed((): View => ({
        span: this.span.value,
        width: this.width.value,
        raw: this.raw.value,
        other: this.other.value,
    }));
    private readonly seen = new Map<string, number>();
    private readonly asking = new Latest<undefined>(() => this.ask());
    private beside: BesideSource | undefined;
    private left = false;

    constructor(
        public whole: Span,
        private readonly source: RawSource | undefined,
        /** The moment that another picture shows too; it stays when the pointer leaves. */
        private readonly tied?: Signal<number | undefined>,
    ) {
        this.span = signal(whole);
        this.cursor = tied ?? signal<number | undefined>(undefined);
    }

    /** What was recorded is longer or shorter than was known. */
    over(whole: Span): void {
        if (isSame(whole, this.whole)) return;
        const all = isSame(this.span.peek(), this.whole);
        this.whole = whole;
        this.look(all ? whole : this.span.peek());
    }

    /** Lays another recording over, or takes it away. */
    compare(beside: BesideSource | undefined): void {
        if (
            beside?.source.id === this.beside?.source.id &&
            beside?.shiftS === this.beside?.shiftS
        ) {
            return;
        }
        this.beside = beside;
        this.other.value = new Map();
        if (beside !== undefined) this.asking.offer(undefined);
    }

    look(span: Span): void {
        const next = within(span, this.whole);
        if (isSame(next, this.span.peek())) return;
        this.span.value = next;
        this.asking.offer(undefined);
    }

    zoom(about: number | undefined, factor: number): void {
        const span = this.span.peek();
        const at = about ?? (span.from + span.to) / 2;
        this.look(zoomed(span, this.whole, at, factor));
    }

    move(share: number): void {
        this.look(moved(this.span.peek(), this.whole, share));
    }

    all(): void {
        this.look(this.whole);
    }

    /** Puts the cursor on a moment and brings it into sight; undefined takes it away. */
    point(time: number | undefined): void {
        if (time === undefined) {
            if (this.tied === undefined) this.cursor.value = undefined;
            return;
        }
        const at = Math.min(Math.max(time, this.whole.from), this.whole.to);
        const span = this.span.peek();
        this.cursor.value = at;
        if (at < span.from) this.look({ from: at, to: at + (span.to - span.from) });
        else if (at > span.to) this.look({ from: at - (span.to - span.from), to: at });
    }

    widen(width: number): void {
        if (width === this.width.peek()) return;
        this.width.value = width;
        this.asking.offer(undefined);
    }

    /** A channel came into sight, or went; two strips may show the same. */
    sees(channel: string | undefined, comes: boolean): void {
        if (channel === undefined) return;
        const count = (this.seen.get(channel) ?? 0) + (comes ? 1 : -1);
        if (count > 0) this.seen.set(channel, count);
        else this.seen.delete(channel);
        if (comes && count === 1) this.asking.offer(undefined);
    }

    leave(): void {
        this.left = true;
        this.asking.drop();
    }

    private gone(): boolean {
        return this.left;
    }

    private async ask(): Promise<void> {
        // What comes into sight in one go is asked for at once.
        await Promise.resolve();
        const channels = [...this.seen.keys()];
        const { source, beside } = this;
        if (this.gone() || channels.length === 0) return;
        const span = this.span.peek();
        const pixels = Math.min(MOST_PIXELS, Math.max(50, Math.round(this.width.peek())));
        const [own, other] = await Promise.all([
            source?.stretches(channels, span, pixels),
            beside?.source.stretches(channels, shifted(span, -beside.shiftS), pixels),
        ]);
        if (this.gone()) return;
        if (own !== undefined) this.raw.value = laid(this.raw.peek(), own, 0);
        if (other !== undefined && beside === this.beside) {
            this.other.value = laid(this.other.peek(), other, beside?.shiftS ?? 0);
        }
    }
}

function shifted(span: Span, by: number): Span {
    return { from: span.from + by, to: span.to + by };
}

function laid(before: Channels, stretches: readonly Stretch[], shiftS: number): Channels {
    const all = new Map(before);
    for (const stretch of stretches) {
        const times = shiftS === 0 ? stretch.times : stretch.times.map(time => time + shiftS);
        all.set(stretch.channel, envelopeOf({ ...stretch, times }));
    }
    return all;
}
