let turn = Date.now();

/**
 * Number of a request among those of this tab. Two can overtake each other on their way: the server
 * takes the higher one for the newer. It begins with the clock, so that a page loaded anew goes on.
 */
export function nextTurn(): number {
    return ++turn;
}
