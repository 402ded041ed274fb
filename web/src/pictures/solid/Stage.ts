import {
    DirectionalLight,
    Group,
    HemisphereLight,
    PerspectiveCamera,
    Plane,
    Raycaster,
    Scene as Space,
    Spherical,
    Vector2,
    Vector3,
    WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import { placed, rendered, UNTURNED, type At, type Turn } from '../../core/pose';
import { fromXyz, xyz, type Outlook } from '../../core/solid';
import { plus, point, type Point } from '../../core/space';
import { pointed, type Seen, type Thing } from '../../core/things';
import type { Exhibit, Overlay } from './exhibit';
import { Names } from './Names';
import { about, free, vector, type Colour, type Extent } from './shapes';

/** A turn by arrow key. */
const TURN = (10 * Math.PI) / 180;
const NEAR_POLE = 0.02;

export interface Chosen {
    selected: string | undefined;
    marked: readonly string[];
}

/** An exhibit in space on one canvas. Draws when something has changed, and never else. */
export class Stage {
    private readonly renderer: WebGLRenderer;
    private readonly camera = new PerspectiveCamera(35, 1, 0.01, 200);
    private readonly space = new Space();
    private readonly controls: OrbitControls;
    private readonly resized: ResizeObserver;
    private readonly names: Names;
    /** Stands where the rig stands; the ground does not go along. */
    private readonly posed = new Group();
    private built = new Group();
    private world = new Group();
    private over = new Group();
    private rings = new Group();
    private overlay: Overlay | undefined;
    private frame = 0;
    private frames = 0;
    private extent: Extent | undefined;

    /**
     * @param labels where names are written, over the canvas
     * @throws Error where the browser has no WebGL
     */
    constructor(
        private readonly canvas: HTMLCanvasElement,
        labels: HTMLElement,
        private readonly colour: Colour,
        private exhibit: Exhibit,
        private chosen: Chosen,
    ) {
        const context = canvas.getContext('webgl2', { antialias: true, alpha: false });
        if (!context) {
            throw new Error('no WebGL'); // asked for here, since the library would write it to the console
        }
        this.renderer = new WebGLRenderer({ canvas, context, antialias: true, alpha: false });
        this.renderer.setPixelRatio(Math.min(2, devicePixelRatio));
        this.names = new Names(canvas, labels, colour);
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
        this.show(exhibit);
        this.size();
    }

    /** Another exhibit, or another state of it; whoever looks stays where they are. */
    show(exhibit: Exhibit): void {
        this.exhibit = exhibit;
        this.paint();
    }

    /** What lies over the exhibit, in place of what lay there. */
    lay(overlay: Overlay | undefined): void {
        this.overlay = overlay;
        free(this.over);
        this.over = overlay?.build(this.colour) ?? new Group();
        this.posed.add(this.over);
        this.need();
    }

    choose(chosen: Chosen): void {
        this.chosen = chosen;
        this.mark();
    }

    /** Draws everything anew: the rig has changed, or the colours of the page. */
    readonly paint = (): void => {
        free(this.built);
        free(this.world);
        this.built = this.exhibit.rig(this.colour);
        this.world = this.exhibit.world(this.colour);
        this.posed.add(this.built);
        this.space.add(this.world);
        this.renderer.setClearColor(this.colour('--sheet'));
        if (!this.extent) {
            this.extent = this.exhibit.extent;
            this.look(point(-0.8, 0.7, 0.5));
        }
        this.lay(this.overlay);
        this.mark();
    };

    /** Looks at an exhibit of another size from where one looked before. */
    fit(): void {
        this.extent = this.exhibit.extent;
        const way = this.camera.position.clone().sub(this.controls.target);
        this.look(fromXyz([way.x, way.y, way.z]));
    }

    /**
     * Where the rig is, from where it is drawn: how far it has gone, m, forward, right and down, and
     * how it is turned about the origin of its drawing. Whoever looks goes along; the ground stays.
     */
    pose(at: At, turn: Turn = UNTURNED): void {
        const to = vector(placed(at));
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

    /** Whether the pointer turns the exhibit: not while it holds a part. */
    turns(may: boolean): void {
        this.controls.enabled = may;
    }

    look(from: Outlook['from']): void {
        if (!this.extent) {
            return;
        }
        const { middle, reach } = this.extent;
        const away = (1.04 * reach) / Math.sin((this.camera.fov * Math.PI) / 360);
        const far =
            away / Math.min(1, this.camera.aspect) / Math.hypot(from.forward, from.right, from.up);
        this.camera.position.copy(vector(plus(middle, from, far))).add(this.posed.position);
        this.controls.target.copy(vector(middle)).add(this.posed.position);
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

    /** What is meant by a point of the canvas, if something is. */
    pick(x: number, y: number): Thing | undefined {
        return pointed(this.exhibit.things, this.see, x, y);
    }

    /** Towards whoever looks, in the axes of the rig as it is drawn. */
    outlook(): Point {
        const { x, y, z } = this.camera.position.clone().sub(this.controls.target).normalize();
        return fromXyz([x, y, z]);
    }

    /** Where the pointer meets the plane through a place, square to a direction. */
    onPlane(x: number, y: number, through: Point, square: Point): Point | undefined {
        const { clientWidth, clientHeight } = this.canvas;
        const ray = new Raycaster();
        const spot = new Vector2((2 * x) / clientWidth - 1, 1 - (2 * y) / clientHeight);
        ray.setFromCamera(spot, this.camera);
        const plane = new Plane().setFromNormalAndCoplanarPoint(vector(square), vector(through));
        const met = ray.ray.intersectPlane(plane, new Vector3());
        return met ? fromXyz([met.x, met.y, met.z]) : undefined;
    }

    /** What is seen, with the names, as a bitmap. */
    async bitmap(): Promise<Blob> {
        this.draw();
        return this.names.bitmap();
    }

    dispose(): void {
        cancelAnimationFrame(this.frame);
        this.resized.disconnect();
        this.controls.dispose();
        for (const group of [this.built, this.world, this.over, this.rings]) {
            free(group);
        }
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

    private thing(id: string): Thing | undefined {
        return this.exhibit.things.find(thing => thing.id === id);
    }

    private mark(): void {
        free(this.rings);
        this.rings = new Group();
        const add = (part: string, token: string, broken: boolean): void => {
            const thing = this.thing(part);
            if (thing) {
                this.rings.add(about(thing, this.colour(token), broken));
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
        const { selected } = this.chosen;
        const chosen = selected === undefined ? undefined : this.thing(selected);
        this.names.write(chosen, [...(this.overlay?.names ?? []), ...this.exhibit.names], this.see);
        if (chosen) {
            const { x, y } = this.see(chosen.from);
            this.canvas.dataset['chosenAt'] = `${x.toFixed(1)} ${y.toFixed(1)}`;
        }
        // So that it can be seen that nothing is drawn while nothing changes, and how much it takes.
        this.canvas.dataset['frames'] = String(++this.frames);
        this.canvas.dataset['calls'] = String(this.renderer.info.render.calls);
    }

    private readonly see = (p: Point): Seen => {
        const at = new Vector3(...xyz(p)).applyMatrix4(this.posed.matrixWorld);
        const { clientWidth, clientHeight } = this.canvas;
        const depth = -at.clone().applyMatrix4(this.camera.matrixWorldInverse).z;
        const perM =
            clientHeight / 2 / Math.tan((this.camera.fov * Math.PI) / 360) / Math.max(depth, 1e-3);
        at.project(this.camera);
        return {
            x: ((at.x + 1) / 2) * clientWidth,
            y: ((1 - at.y) / 2) * clientHeight,
            depth,
            perM,
        };
    };
}
