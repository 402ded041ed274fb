// The door of the pictures. The solid view brings a large library: it is to be loaded by
// `import('../pictures/SolidView')` when it is opened, and is therefore not named here.
import './pictures.css';

export type { Drag, PictureProps, RigProps, Show } from './api';
export { Picture } from './Picture';
export { RigViews } from './RigViews';
export { BeforeAndNow } from './BeforeAndNow';
export { BesidePicture } from './BesidePicture';
