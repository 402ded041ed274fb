import { useEffect, useState } from 'preact/hooks';
import type { DeskView } from '../core/desk';
import { problemWords } from '../core/problems';
import type { OutlineNode } from '../core/wire';
import { useBay } from './context';

/** The file as a tree: its values can be changed without knowing how the file is written. */
export function Outline({ view }: { view: DeskView }) {
    const late = view.text !== view.document.text;
    return (
        <div class="outline" role="group" aria-label="Outline of the rig file">
            {view.document.outline.length === 0 && (
                <p class="quiet">There is no outline while the text cannot be read as a tree.</p>
            )}
            {late && <p class="quiet">The text is being read.</p>}
            <ul>
                {view.document.outline.map(node => (
                    <Node key={node.path} node={node} depth={0} />
                ))}
            </ul>
        </div>
    );
}

function Node({ node, depth }: { node: OutlineNode; depth: number }) {
    const bay = useBay();
    const looked = bay.look.value;
    const within = looked !== undefined && looked.from >= node.from && looked.to <= node.to;
    const [open, setOpen] = useState(depth === 0 && node.children.length <= SHORT);
    useEffect(() => {
        if (within && node.children.length > 0) setOpen(true);
    }, [looked, within, node.children.length]);
    if (node.value !== undefined) return <Scalar node={node} value={node.value} marked={within} />;
    return (
        <li>
            <details
                open={open}
                onToggle={event => {
                    setOpen(event.currentTarget.open);
                }}
            >
                <summary>
                    {node.key} <span class="quiet">{summaryOf(node)}</span>
                </summary>
                {open && (
                    <ul>
                        {node.children.map(child => (
                            <Node key={child.path} node={child} depth={depth + 1} />
                        ))}
                    </ul>
                )}
            </details>
        </li>
    );
}

const SHORT = 12;

/** What a closed branch holds: its name where it has one, or how much there is. */
function summaryOf(node: OutlineNode): string {
    const name = node.children.find(({ key }) => key === 'id')?.value;
    if (name !== undefined) return name;
    return node.children.length === 1 ? '1 entry' : `${node.children.length} entries`;
}

function Scalar({ node, value, marked }: { node: OutlineNode; value: string; marked: boolean }) {
    const bay = useBay();
    const [typed, setTyped] = useState(value);
    useEffect(() => {
        setTyped(value);
    }, [value]);
    const problem = bay.desk.value?.document.problems.find(({ path }) => path === node.path);
    const make = () => {
        if (typed === value) return;
        bay.change([{ kind: 'set', at: node.path, value: typed }], `set ${node.path}`);
    };
    return (
        <li class={marked ? 'scalar marked' : 'scalar'}>
            <label>
                <span>{node.key}</span>
                <input
                    type="text"
                    value={typed}
                    aria-invalid={problem?.severity === 'error'}
                    onInput={event => {
                        setTyped(event.currentTarget.value);
                    }}
                    onBlur={make}
                    onKeyDown={event => {
                        if (event.key === 'Enter') make();
                        if (event.key === 'Escape') setTyped(value);
                    }}
                />
            </label>
            {problem !== undefined && <span class="quiet">{problemWords(problem)}</span>}
        </li>
    );
}
