import type { Span } from './span';
import type { Stretch } from './wire';

/** Where samples come from: all that was recorded, thinned to pixels. */
export interface RawSource {
    /** Names the recording. */
    readonly id: string;
    /** Undefined where they do not come. */
    stretches(
        channels: readonly string[],
        span: Span,
        pixels: number,
    ): Promise<readonly Stretch[] | undefined>;
}

/** Another recording, laid over. */
export interface BesideSource {
    readonly source: RawSource;
    /** Its clock, read on the first one's, begins this much later, s. */
    readonly shiftS: number;
}
