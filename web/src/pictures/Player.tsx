import { useEffect, useRef, useState } from 'preact/hooks';
import { firstOf, keyed, lastOf, later, pressed, SPEEDS, speedBeside } from '../core/playing';
import type { Film } from '../core/playing';
import { useCalm } from './useCalm';

interface PlayerProps {
    /** What is played, for a listener: "The rig as it warms". */
    title: string;
    film: Film;
    /** The time that is shown, s. */
    at: number;
    /** Nothing was chosen yet: playing begins at the start and not where it stands. */
    untouched?: boolean | undefined;
    /** The time in words, with its unit. */
    words: (at: number) => string;
    /** What is to be seen at a time, for a listener; may be empty. */
    told?: ((at: number) => string) | undefined;
    onAt: (at: number) => void;
}

/**
 * Goes through time: a slider, play and pause, speeds. Space plays, arrow keys go by moments, Page by
 * long ways, + and − choose the speed. It asks for no frame while it rests, and who wants no motion
 * goes on by single presses.
 */
export function Player(props: PlayerProps) {
    const { title, film, at, untouched = false, words, told, onAt } = props;
    const [playing, setPlaying] = useState(false);
    const [speed, setSpeed] = useState(1);
    const calm = useCalm();
    const now = useRef({ at, film, speed, onAt });
    now.current = { at, film, speed, onAt };
    const last = lastOf(film);
    const first = firstOf(film);

    useEffect(() => {
        if (!playing) return undefined;
        let before: number | undefined;
        let frame = 0;
        const step = (clock: number): void => {
            const { at, film, speed, onAt } = now.current;
            if (at >= lastOf(film)) {
                setPlaying(false);
                return;
            }
            if (before !== undefined) {
                onAt(later(film, at, (clock - before) / 1000, speed));
            }
            before = clock;
            frame = requestAnimationFrame(step);
        };
        frame = requestAnimationFrame(step);
        return () => {
            cancelAnimationFrame(frame);
        };
    }, [playing]);

    const go = (): void => {
        if (calm) {
            onAt(untouched ? first : pressed(film, at));
            return;
        }
        if (!playing && (untouched || at >= last)) {
            onAt(first);
        }
        setPlaying(!playing);
    };
    const onKey = (event: KeyboardEvent): void => {
        const { key, ctrlKey, metaKey, altKey } = event;
        if (ctrlKey || metaKey || altKey || event.target instanceof HTMLSelectElement) return;
        const to = event.target instanceof HTMLInputElement ? keyed(film, at, key) : undefined;
        if (to !== undefined) {
            setPlaying(false);
            onAt(to);
        } else if (key === ' ' && event.target instanceof HTMLInputElement) {
            go();
        } else if (key === '+' || key === '=') {
            setSpeed(speedBeside(speed, 1));
        } else if (key === '-') {
            setSpeed(speedBeside(speed, -1));
        } else {
            return;
        }
        event.preventDefault();
        event.stopPropagation();
    };
    const said = told?.(at) ?? '';
    return (
        <div class="player" role="group" aria-label={`${title}: moments`} onKeyDown={onKey}>
            <button type="button" onClick={go} disabled={!(last > first)}>
                {calm ? 'next moment' : playing ? 'pause' : 'play'}
            </button>
            <input
                type="range"
                min={first}
                max={last}
                step="any"
                value={at}
                aria-label={`moment of ${title}`}
                aria-valuetext={said === '' ? words(at) : `${words(at)}: ${said}`}
                onInput={event => {
                    setPlaying(false);
                    onAt(Number(event.currentTarget.value));
                }}
            />
            <output data-si={String(at)}>{words(at)}</output>
            {!calm && (
                <select
                    aria-label={`speed of ${title}`}
                    value={String(speed)}
                    onChange={event => {
                        setSpeed(Number(event.currentTarget.value));
                    }}
                >
                    {SPEEDS.map(each => (
                        <option key={each} value={String(each)}>
                            {each} ×
                        </option>
                    ))}
                </select>
            )}
        </div>
    );
}
