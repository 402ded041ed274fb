import { render } from 'preact';
import { useCallback, useEffect, useId, useMemo, useRef, useState } from 'preact/hooks';
import { numeral, shownOn } from '../core/axis';
import { curvesOf, explained, zoneWords, type Curves } from '../core/curve';
import { numbersOf } from '../core/numbers';
import type { Plot } from '../core/wire';
import type { PictureProps } from './api';
import { CurveSvg, Mark, wordsOf, ZoneBox } from './CurveSvg';
import { Frame } from './Frame';
import { Hatches } from './Hatches';
import { plotter, type Plotter } from './plotter';
import { onTheme } from './theme';

/** Points and curves over one axis, with a cursor for pointer and arrow keys. */
export function CurvePicture(props: PictureProps & { section: Plot }) {
    const { section, fields, fileName, stale } = props;
    const curves = useMemo(() => curvesOf(section, fields), [section, fields]);
    const tables = useCallback(() => numbersOf(section, fields), [section, fields]);
    return (
        <Frame
            title={section.title}
            fileName={fileName}
            kind="curve"
            tables={tables}
            stale={stale}
            drawn={frame => vectors(curves, frame)}
        >
            <Plotted curves={curves} together={section.x.field} />
        </Frame>
    );
}

/** The same curves as a vector picture, drawn aside so that they take the look of the page. */
function vectors(curves: Curves, frame: HTMLElement): SVGSVGElement[] {
    const aside = document.createElement('div');
    aside.className = 'aside';
    frame.append(aside);
    render(<CurveSvg curves={curves} />, aside);
    const svg = aside.querySelector('svg');
    setTimeout(() => {
        render(null, aside);
        aside.remove();
    });
    return svg ? [svg] : [];
}

function Plotted({ curves, together }: { curves: Curves; together: string }) {
    const id = useId();
    const home = useRef<HTMLDivElement>(null);
    const plot = useRef<Plotter>(undefined);
    const drawn = useRef(curves);
    const [plain, setPlain] = useState(false);
    const [step, setStep] = useState<number>();

    useEffect(() => {
        if (!home.current) {
            return undefined;
        }
        const made = plotter(home.current, drawn.current, together, setStep);
        plot.current = made;
        if (!made) {
            setPlain(true);
            return undefined;
        }
        const deaf = onTheme(() => {
            made.redraw();
        });
        return () => {
            deaf();
            made.dispose();
        };
    }, [together]);

    useEffect(() => {
        if (drawn.current !== curves) {
            drawn.current = curves;
            plot.current?.show(curves);
        }
    }, [curves]);

    const onKey = (event: KeyboardEvent): void => {
        const last = curves.steps.length - 1;
        const to = {
            ArrowRight: step === undefined ? 0 : Math.min(last, step + 1),
            ArrowLeft: step === undefined ? last : Math.max(0, step - 1),
            Home: 0,
            End: last,
        }[event.key];
        if (to !== undefined && to >= 0) {
            event.preventDefault();
            plot.current?.point(to);
            setStep(to);
        }
    };
    if (plain) {
        return <CurveSvg curves={curves} />;
    }
    return (
        <>
            <ul class="legend">
                {explained(curves).map((each, k) => (
                    <li key={k}>
                        <svg viewBox="0 0 30 14" width="30" height="14" aria-hidden="true">
                            <Mark mark={each.mark} line={each.line} x={15} y={7} />
                        </svg>
                        {each.label}
                    </li>
                ))}
                {curves.zones.map((zone, k) => (
                    <li key={`zone ${k}`}>
                        <svg viewBox="0 0 30 14" width="30" height="14" aria-hidden="true">
                            <Hatches id={`${id}-${k}`} />
                            <ZoneBox id={`${id}-${k}`} x={1} y={1} width={28} height={12} />
                        </svg>
                        {zoneWords(curves, zone)}
                    </li>
                ))}
            </ul>
            <p class="axis-title">{curves.y.title}</p>
            <div
                ref={home}
                class="plot"
                role="img"
                tabIndex={0}
                aria-label={`${curves.title}: ${wordsOf(curves)}. Arrow keys step through the points.`}
                onKeyDown={onKey}
                onBlur={() => {
                    plot.current?.point(undefined);
                    setStep(undefined);
                }}
            />
            <p class="axis-title x">{curves.x.title}</p>
            <p class="picture-key reading" aria-live="polite">
                {step === undefined ? '\u00a0' : reading(curves, step)}
            </p>
        </>
    );
}

/** What the axes show at a point. */
function reading({ x, y, steps }: Curves, step: number): string {
    const at = steps[step];
    if (!at) {
        return '';
    }
    const part = (axis: typeof x, si: number): string =>
        `${axis.title.replace(/ \[.*\]$/, '')} ${numeral(shownOn(axis, si), axis.step / 100)}${axis.unit ? ` ${axis.unit}` : ''}`;
    return `${part(x, at[0])}: ${part(y, at[1])}`;
}
