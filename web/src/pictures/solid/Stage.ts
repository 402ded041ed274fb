import {
    DirectionalLight,
    Group,
    HemisphereLight,
    PerspectiveCamera,
    Scene as Space,
    Spherical,
    Vector3,
    WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import { Labels, LETTER, type Box, type Label } from '../../core/labels';
import { bareName } from '../../core/mounts';
import { groupOf, named } from '../../core/rigLabels';
import { placed, rendered, UNTURNED, type At, type Turn } from '../../core/pose';
import { placeOf, type Scene } from '../../core/scene';
import { xyz, type Outlook } from '../../core/solid';
import { plus, point, type Point } from '../../core/space';
import { bitmapOf } from '../save';
import { about, build, extentOf, free, ground, type Colour, type Extent } from './build';

/** A turn by arrow key. */
const TURN = (10 * Math.PI) / 180;
const NEAR_POLE = 0.02;
const PICK_FROM = 26;

export interface Chosen {
    selected: string | undefined;
    marked: readonly string[];
}

/** A rig in space on one canvas. Draws when something has changed, and never else. */
export class Stage {
    private readonly renderer: WebGLRenderer;
    private readonly camera = new PerspectiveCamera(35, 1, 0.01, 100);
    private readonly space = new Space();
    private readonly controls: OrbitControls;
    private readonly resized: ResizeObserver;
    /** Stands where the rig stands; the ground does not go along. */
    private readonly posed = new Group();
    private built = new Group();
    private ground = new Group();
    private rings = new Group();
    private frame = 0;
    private extent: Extent | undefined;
    private placed: Label[] = [];

    /**
     * @param labels where names are written, over the canvas
     * @throws Error where the browser has no WebGL
     */
    constructor(
        private readonly canvas: HTMLCanvasElement,
        private readonly labels: HTMLElement,
        private readonly colour: Colour,
        private scene: Scene,
        private chosen: Chosen,
    ) {
        const context = canvas.getContext('webgl2', { antialias: true, alpha: false });
        if (!context) {
            throw new Error('no WebGL'); // asked for here, since the library would write it to the console
        }
        this.renderer = new WebGLRenderer({ canvas, context, antialias: true, alpha: false });
        this.renderer.setPixelRatio(Math.min(2, devicePixelRatio));
        const sun = new DirectionalLight('#ffffff', 1.6);
        sun.position.set(1, 2, 2);
        this.space.add(new HemisphereLight('#ffffff', '#8a8578', 2), sun, this.posed);
        this.controls = new OrbitControls(this.camera, canvas);
        this.controls.enableDamping = false;
        this.controls.enablePan = false;
        this.controls.enableZoom = false; // the wheel scrolls the page until the picture is chosen
        this.controls.addEventListener('change', this.need);
        canvas.addEventListener('webglcontextrestored', this.paint);
        this.resized = new ResizeObserver(this.size);
        this.resized.observe(canvas);
        this.show(scene);
        this.size();
    }

    /** Another state of the rig; whoever looks stays where they are. */
    show(scene: Scene): void {
        this.scene = scene;
        this.paint();
    }

    choose(chosen: Chosen): void {
        this.chosen = chosen;
        this.mark();
    }

    /** Draws everything anew: the rig has changed, or the colours of the page. */
    readonly paint = (): void => {
        free(this.built);
        const extent = extentOf(this.scene);
        this.built = build(this.scene, extent, this.colour);
        this.posed.add(this.built);
        free(this.ground);
        this.ground = ground(extent, this.colour);
        this.space.add(this.ground);
        this.renderer.setClearColor(this.colour('--sheet'));
        if (!this.extent) {
            this.extent = extent;
            this.look(point(-0.8, 0.7, 0.5));
        }
        this.mark();
    };

    /**
     * Where the rig is, from where it is drawn: how far it has gone, m, forward, right and down, and
     * how it is turned about the origin of its drawing. Whoever looks goes along; the ground stays.
     */
    pose(at: At, turn: Turn = UNTURNED): void {
        const to = new Vector3(...xyz(placed(at)));
        const way = to.clone().sub(this.posed.position);
        this.posed.position.copy(to);
        this.posed.quaternion.set(...rendered(turn)).normalize();
        this.posed.updateMatrixWorld();
        this.camera.position.add(way);
        this.controls.target.add(way);
        this.controls.update();
        this.need();
    }

    /** Whether the wheel and two fingers come nearer. */
    zoom(may: boolean): void {
        this.controls.enableZoom = may;
    }

    look(from: Outlook['from']): void {
        if (!this.extent) {
            return;
        }
        const { middle, reach } = this.extent;
        const away = (1.04 * reach) / Math.sin((this.camera.fov * Math.PI) / 360);
        const far =
            away / Math.min(1, this.camera.aspect) / Math.hypot(from.forward, from.right, from.up);
        this.camera.position.set(...xyz(plus(middle, from, far))).add(this.posed.position);
        this.controls.target.set(...xyz(middle)).add(this.posed.position);
        this.controls.update();
        this.need();
    }

    /** By arrow keys, + and −; false for any other key. */
    key(key: string): boolean {
        const way = this.camera.position.clone().sub(this.controls.target);
        const at = new Spherical().setFromVector3(way);
        switch (key) {
            case 'ArrowLeft':
                at.theta -= TURN;
                break;
            case 'ArrowRight':
                at.theta += TURN;
                break;
            case 'ArrowUp':
                at.phi = Math.max(NEAR_POLE, at.phi - TURN);
                break;
            case 'ArrowDown':
                at.phi = Math.min(Math.PI - NEAR_POLE, at.phi + TURN);
                break;
            case '+':
            case '=':
                at.radius /= 1.1;
                break;
            case '-':
                at.radius *= 1.1;
                break;
            default:
                return false;
        }
        this.camera.position.setFromSpherical(at).add(this.controls.target);
        this.controls.update();
        this.need();
        return true;
    }

    /** The part nearest to a point of the canvas, if one is near. */
    pick(x: number, y: number): string | undefined {
        let best: string | undefined;
        let least = PICK_FROM;
        for (const { id, at } of [...this.scene.fans, ...this.scene.parts]) {
            const [px, py] = this.project(at);
            const far = Math.hypot(px - x, py - y);
            if (far < least) {
                least = far;
                best = id;
            }
        }
        return best;
    }

    /** What is seen, with the names, as a bitmap. */
    async bitmap(): Promise<Blob> {
        this.draw();
        const copy = document.createElement('canvas');
        copy.width = this.canvas.width;
        copy.height = this.canvas.height;
        const pen = copy.getContext('2d');
        if (!pen) {
            throw new Error('this browser paints no bitmap');
        }
        pen.drawImage(this.canvas, 0, 0);
        const ratio = this.canvas.width / this.canvas.clientWidth;
        pen.scale(ratio, ratio);
        pen.font = `bold ${LETTER}px sans-serif`;
        pen.textAlign = 'center';
        pen.lineWidth = 3;
        for (const label of this.placed) {
            pen.strokeStyle = this.colour('--sheet');
            pen.strokeText(label.words, label.x, label.y);
            pen.fillStyle = this.colour('--ink');
            pen.fillText(label.words, label.x, label.y);
        }
        return bitmapOf(copy);
    }

    dispose(): void {
        cancelAnimationFrame(this.frame);
        this.resized.disconnect();
        this.controls.dispose();
        free(this.built);
        free(this.ground);
        free(this.rings);
        this.renderer.dispose();
    }

    private readonly need = (): void => {
        if (this.frame === 0) {
            this.frame = requestAnimationFrame(() => {
                this.frame = 0;
                this.draw();
            });
        }
    };

    private readonly size = (): void => {
        const { clientWidth: width, clientHeight: height } = this.canvas;
        if (width > 0 && height > 0) {
            this.renderer.setSize(width, height, false);
            this.camera.aspect = width / height;
            this.camera.updateProjectionMatrix();
            this.need();
        }
    };

    private mark(): void {
        free(this.rings);
        this.rings = new Group();
        const add = (part: string, token: string, broken: boolean): void => {
            const at = placeOf(this.scene, part);
            if (at) {
                const tip = this.scene.fans.find(fan => fan.id === part)?.tipM ?? 0.08;
                this.rings.add(about(at, 0.68 * tip, this.colour(token), broken));
            }
        };
        this.chosen.marked.forEach(part => {
            add(part, '--unmet', true);
        });
        if (this.chosen.selected !== undefined) {
            add(this.chosen.selected, '--accent', false);
        }
        this.posed.add(this.rings);
        this.need();
    }

    private draw(): void {
        const facing = this.posed.quaternion.clone().invert().multiply(this.camera.quaternion);
        for (const ring of this.rings.children) {
            ring.quaternion.copy(facing);
        }
        this.renderer.render(this.space, this.camera);
        this.name();
    }

    private project(p: Point): [number, number] {
        const at = new Vector3(...xyz(p)).applyMatrix4(this.posed.matrixWorld).project(this.camera);
        return [
            ((at.x + 1) / 2) * this.canvas.clientWidth,
            ((1 - at.y) / 2) * this.canvas.clientHeight,
        ];
    }

    /** Names of groups, none over another; the selected part by its own. */
    private name(): void {
        const labels = new Labels(this.canvas.clientWidth, this.canvas.clientHeight);
        const { selected } = this.chosen;
        const groups = new Map<string, Box[]>();
        const parts = [
            ...this.scene.fans,
            ...this.scene.parts.filter(each => each.kind === 'pack'),
        ];
        for (const { id, at } of parts) {
            const name = id === selected ? id : groupOf(id);
            const [x, y] = this.project(at);
            const box = { left: x - 12, top: y - 12, right: x + 12, bottom: y + 12 };
            groups.set(name, [...(groups.get(name) ?? []), box]);
        }
        this.placed = [];
        for (const [name, boxes] of groups) {
            const found = labels.beside(named(boxes), bareName(name));
            if (found) {
                this.placed.push(found);
            }
        }
        write(this.labels, this.placed);
    }
}

/** Keeps as many elements as there are labels; places them from script, as the policy allows. */
function write(home: HTMLElement, labels: readonly Label[]): void {
    while (home.childElementCount > labels.length) {
        home.lastElementChild?.remove();
    }
    labels.forEach((label, k) => {
        const element = home.children[k] ?? home.appendChild(document.createElement('span'));
        element.textContent = label.words;
        if (element instanceof HTMLElement) {
            element.style.transform = `translate(${label.box.left}px, ${label.box.top}px)`;
        }
    });
}
