import { render } from 'preact';
import { act } from 'preact/test-utils';
import { expect, test, vi } from 'vitest';
import type { Drawing } from '../../src/core/wire';
import SolidView from '../../src/pictures/SolidView';
import bare from './data/sandpiper.json';
import { withTexts } from './texts';

test('without WebGL words say so, and the table is there all the same', () => {
    const { sections, fields } = withTexts(bare.balance);
    const drawing = sections.find((each): each is Drawing => each.kind === 'drawing');
    if (!drawing) {
        throw new Error('no drawing');
    }
    const home = document.createElement('div');
    document.body.append(home);
    void act(() => {
        render(
            <SolidView
                drawing={drawing}
                fields={fields}
                units="si"
                fileName="f"
                parts={[]}
                onShow={vi.fn()}
                onDrag={vi.fn()}
            />,
            home,
        );
    });
    expect(home.textContent).toContain('WebGL is missing');
    expect(home.querySelectorAll('table')).toHaveLength(drawing.layers.length);
    expect(home.querySelector('canvas')).toBeNull();
    render(null, home);
    home.remove();
});
