import { expect, test } from 'vitest';
import page from '../index.html?raw';

test('the page starts without a script or a style of its own in the text', () => {
    expect(page).not.toMatch(/<style|\sstyle=|\son[a-z]+=/);
});
