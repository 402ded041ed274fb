import './look/tokens.css';
import { render } from 'preact';
import { Bay } from './views/Bay';

const root = document.getElementById('bay');
if (root) {
    render(<Bay />, root);
}
