import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { OUTLOOKS } from '../../core/solid';
import type { Thing } from '../../core/things';
import { colours } from '../colour';
import { onTheme } from '../theme';
import type { Exhibit, Overlay } from './exhibit';
import { Stage } from './Stage';

/** A longer way of the pointer turns what is shown, a shorter one chooses. */
const CLICK = 4;

/** What else a pointer or a key may do than turn and choose. */
export interface SpaceHand {
    /** True where it takes what is under the pointer; what follows is then told here. */
    take: (stage: Stage, x: number, y: number) => boolean;
    pull: (stage: Stage, x: number, y: number, free: boolean) => void;
    drop: () => void;
    cancel: () => void;
    /** True where it knows the key. */
    key: (stage: Stage, event: KeyboardEvent) => boolean;
}

interface SpaceProps {
    /** For a listener: what is shown, and what the keys do. */
    words: string;
    exhibit: Exhibit;
    overlay?: Overlay | undefined;
    selected?: string | undefined;
    marked?: readonly string[] | undefined;
    onPick: (thing: Thing) => void;
    hand?: SpaceHand | undefined;
    /** Told once it is there, and without it when it has gone. */
    onStage?: ((stage: Stage | undefined) => void) | undefined;
    /** In place of the canvas where there is no WebGL. */
    instead?: ComponentChildren;
}

const NONE: readonly string[] = [];

/** A canvas with fixed views, names and keys. */
export function SpaceView(props: SpaceProps) {
    const { words, exhibit, overlay, selected, marked = NONE, onPick, hand, instead } = props;
    const canvas = useRef<HTMLCanvasElement>(null);
    const labels = useRef<HTMLDivElement>(null);
    const stage = useRef<Stage>(undefined);
    const first = useRef({ exhibit, chosen: { selected, marked } });
    const tell = useRef(props.onStage);
    tell.current = props.onStage;
    const down = useRef<[number, number]>(undefined);
    const holding = useRef(false);
    const [missing, setMissing] = useState(false);

    useEffect(() => {
        if (!canvas.current || !labels.current?.parentElement) {
            return undefined;
        }
        let made: Stage;
        try {
            made = new Stage(
                canvas.current,
                labels.current,
                colours(labels.current.parentElement),
                first.current.exhibit,
                first.current.chosen,
            );
        } catch {
            setMissing(true); // told in words below: there is no WebGL here
            return undefined;
        }
        stage.current = made;
        tell.current?.(made);
        const deaf = onTheme(made.paint);
        return () => {
            deaf();
            stage.current = undefined;
            tell.current?.(undefined);
            made.dispose();
        };
    }, []);
    const shown = useRef(exhibit);
    useEffect(() => {
        if (shown.current !== exhibit) {
            shown.current = exhibit;
            stage.current?.show(exhibit);
        }
    }, [exhibit]);
    useEffect(() => {
        stage.current?.choose({ selected, marked });
    }, [selected, marked]);
    useEffect(() => {
        stage.current?.lay(overlay);
    }, [overlay]);

    if (missing) {
        return <>{instead}</>;
    }
    const letGo = (end: (() => void) | undefined): void => {
        if (holding.current) {
            holding.current = false;
            stage.current?.turns(true);
            end?.();
        }
    };
    const onKeyDown = (event: KeyboardEvent): void => {
        const on = stage.current;
        if (!on || event.ctrlKey || event.metaKey) return;
        const outlook = OUTLOOKS[Number(event.key) - 1];
        if (hand?.key(on, event)) {
            event.preventDefault();
        } else if (!event.altKey && outlook) {
            on.look(outlook.from);
            event.preventDefault();
        } else if (!event.altKey && on.key(event.key)) {
            event.preventDefault();
        }
    };
    return (
        <>
            <div class="rig-tools" role="group" aria-label="Look">
                {OUTLOOKS.map((outlook, k) => (
                    <button
                        key={outlook.name}
                        type="button"
                        title={`Key ${k + 1} in the picture`}
                        onClick={() => {
                            stage.current?.look(outlook.from);
                        }}
                    >
                        {outlook.words}
                    </button>
                ))}
            </div>
            <div class="solid-home">
                <canvas
                    ref={canvas}
                    class="solid-canvas"
                    tabIndex={0}
                    role="img"
                    aria-label={words}
                    onKeyDown={onKeyDown}
                    onFocus={() => stage.current?.zoom(true)}
                    onBlur={() => stage.current?.zoom(false)}
                    onPointerDownCapture={event => {
                        down.current = [event.clientX, event.clientY];
                        const { offsetX, offsetY, button } = event;
                        const on = stage.current;
                        if (on && button === 0 && hand?.take(on, offsetX, offsetY)) {
                            holding.current = true;
                            on.turns(false);
                            event.currentTarget.setPointerCapture(event.pointerId);
                        }
                    }}
                    onPointerMove={event => {
                        if (holding.current && stage.current) {
                            hand?.pull(stage.current, event.offsetX, event.offsetY, event.altKey);
                        }
                    }}
                    onPointerCancel={() => {
                        letGo(hand?.cancel);
                    }}
                    onPointerUp={event => {
                        const from = down.current;
                        letGo(hand?.drop);
                        if (
                            from &&
                            Math.hypot(event.clientX - from[0], event.clientY - from[1]) < CLICK
                        ) {
                            const thing = stage.current?.pick(event.offsetX, event.offsetY);
                            if (thing) {
                                onPick(thing);
                            }
                        }
                    }}
                />
                <div ref={labels} class="solid-labels" aria-hidden="true" />
            </div>
        </>
    );
}
