import { Folder } from '../harness/folder';

/**
 * Mudlark with four times its fans and packs, 96 and 48: not a rig that anybody could wear, but as much
 * as the page may meet. Every pack feeds two fans, one of each side.
 */
export function manyFans(): Folder {
    const folder = Folder.of('mudlark');
    let text = folder.read('rig.yaml');
    const put = (was: string, is: string) => {
        if (!text.includes(was)) {
            throw new Error(`Mudlark says no longer: ${was}`);
        }
        text = text.replaceAll(was, is);
    };
    put('row: 4', 'row: 16');
    put('right: -240 mm', 'right: -1200 mm');
    put('right: 240 mm', 'right: 1200 mm');
    put('rows: [4, 4]', 'rows: [8, 8, 8, 8]');
    put('id: p, count: 12', 'id: p, count: 48');
    put('poles: 12', 'poles: 48');
    const fed = [...pairs('back-top', 'back-bottom', 16), ...pairs('left', 'right', 32)];
    const from = text.indexOf('        p.1: [');
    const to = text.indexOf('  kills:');
    const rows = fed.map((pair, i) => `        p.${i + 1}: [${pair}]\n`).join('');
    folder.write('rig.yaml', text.slice(0, from) + rows + text.slice(to));
    return folder;
}

function pairs(one: string, other: string, count: number): string[] {
    return Array.from({ length: count }, (_, i) => `${one}.${i + 1}, ${other}.${count - i}`);
}
