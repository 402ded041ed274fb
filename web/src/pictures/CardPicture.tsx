import { useMemo } from 'preact/hooks';
import { numbersOf } from '../core/numbers';
import type { Card, CardBlock, CardLines } from '../core/wire';
import type { PictureProps } from './api';
import { ElevationPicture } from './ElevationPicture';
import { TableView } from './TableView';

/** A test card as it is read before it is done: the very words and numbers that are printed. */
export function CardPicture(props: PictureProps & { section: Card }) {
    const { section, stale } = props;
    return (
        <div class={`picture card${stale ? ' stale' : ''}`}>
            <p class="purpose">{section.shown}</p>
            {section.blocks.map((block, k) => (
                <Block key={k} {...props} block={block} />
            ))}
        </div>
    );
}

function Block({ block, ...props }: PictureProps & { block: CardBlock }) {
    switch (block.kind) {
        case 'lines':
            return <LinesOfCard block={block} />;
        case 'table':
            return <Rows {...props} block={block} />;
        case 'elevation':
            return <ElevationPicture {...props} section={block} />;
    }
}

/** Where to stop stands out from all else on a card. */
function Rows({ block, ...props }: PictureProps & { block: CardBlock & { kind: 'table' } }) {
    const { fields, selected, onShow } = props;
    const tables = useMemo(() => numbersOf(block, fields), [block, fields]);
    const aborts = block.id.endsWith('aborts');
    return (
        <section class={aborts ? 'aborts' : 'rows'}>
            <h5>{block.title}</h5>
            {tables.map(table => (
                <TableView
                    key={table.id}
                    table={table}
                    under={block.title}
                    selected={selected}
                    onShow={onShow}
                />
            ))}
        </section>
    );
}

function LinesOfCard({ block }: { block: CardLines }) {
    const lines = block.lines.map((line, k) => <li key={k}>{line.shown}</li>);
    return (
        <section class={`lines ${block.style}`}>
            {block.title !== '' && <h5>{block.title}</h5>}
            {block.style === 'number' ? <ol>{lines}</ol> : <ul>{lines}</ul>}
        </section>
    );
}
