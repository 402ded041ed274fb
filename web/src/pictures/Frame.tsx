import type { ComponentChildren } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import { csvOf } from '../core/csv';
import type { Numbers } from '../core/numbers';
import { saveCsv, saveGlb, savePng, saveSvg } from './save';
import { TableView } from './TableView';

interface FrameProps {
    title: string;
    /** Of the files saved, without ending. */
    fileName: string;
    kind: string;
    /** Made when they are shown or saved. */
    tables: () => readonly Numbers[];
    /** What a file of numbers holds, where that is more than the table shows. */
    file?: (() => readonly Numbers[]) | undefined;
    stale?: boolean | undefined;
    selected?: string | undefined;
    onShow?: ((part: string) => void) | undefined;
    /** What is drawn, as vector pictures; the inline ones of the frame if absent. */
    drawn?: ((frame: HTMLElement) => SVGSVGElement[]) | undefined;
    /** Something that is no vector picture, as a bitmap. */
    bitmap?: (() => Promise<Blob>) | undefined;
    /** Something that stands in space, as a binary glTF file. */
    model?: (() => Promise<Blob>) | undefined;
    children: ComponentChildren;
}

function inline(frame: HTMLElement): SVGSVGElement[] {
    return Array.from(frame.querySelectorAll<SVGSVGElement>('svg.drawn'));
}

/** A picture with its title, the table that says the same one key away, and what saves it. */
export function Frame(props: FrameProps) {
    const { title, fileName, kind, tables, stale, bitmap, model, drawn = inline } = props;
    const frame = useRef<HTMLElement>(null);
    const [asTable, setAsTable] = useState(false);
    const [failed, setFailed] = useState('');
    const caption = useId();

    const turn = (): void => {
        setAsTable(!asTable);
    };
    const saving = (save: () => Promise<void> | void) => (): void => {
        setFailed('');
        Promise.resolve()
            .then(save)
            .catch((fault: unknown) => {
                setFailed(`Not saved: ${fault instanceof Error ? fault.message : String(fault)}`);
            });
    };
    const pictures = (): SVGSVGElement[] => (frame.current ? drawn(frame.current) : []);
    return (
        <figure
            ref={frame}
            class={`picture ${kind}${stale ? ' stale' : ''}`}
            aria-labelledby={caption}
            onKeyDown={event => {
                if (isTableKey(event)) {
                    event.preventDefault();
                    event.stopPropagation();
                    turn();
                }
            }}
        >
            <figcaption id={caption}>
                {title}
                {stale && <span class="was"> (before the last change)</span>}
            </figcaption>
            <div class="drawing" hidden={asTable}>
                {props.children}
            </div>
            {asTable &&
                tables().map(table => (
                    <TableView
                        key={table.id}
                        table={table}
                        under={title}
                        selected={props.selected}
                        onShow={props.onShow}
                    />
                ))}
            <div class="picture-tools" role="group" aria-label={`${title}: table and files`}>
                <button
                    type="button"
                    aria-pressed={asTable}
                    aria-keyshortcuts="T"
                    title="Key T in this picture"
                    onClick={turn}
                >
                    as a table
                </button>
                <span class="save-words">save as</span>
                {!bitmap && (
                    <button
                        type="button"
                        aria-label={`save ${title} as SVG`}
                        onClick={saving(() => {
                            saveSvg(fileName, pictures());
                        })}
                    >
                        SVG
                    </button>
                )}
                <button
                    type="button"
                    aria-label={`save ${title} as PNG`}
                    onClick={saving(() => savePng(fileName, bitmap ?? pictures()))}
                >
                    PNG
                </button>
                <button
                    type="button"
                    aria-label={`save ${title} as CSV`}
                    onClick={saving(() => {
                        saveCsv(fileName, csvOf((props.file ?? tables)()));
                    })}
                >
                    CSV
                </button>
                {model && (
                    <button
                        type="button"
                        aria-label={`save ${title} as glTF`}
                        onClick={saving(() => saveGlb(fileName, model))}
                    >
                        glTF
                    </button>
                )}
                {failed && <span role="alert">{failed}</span>}
            </div>
        </figure>
    );
}

function isTableKey(event: KeyboardEvent): boolean {
    const typing = event.target instanceof HTMLElement && event.target.closest('input, textarea');
    return (
        event.key.toLowerCase() === 't' &&
        !typing &&
        !(event.ctrlKey || event.metaKey || event.altKey)
    );
}
