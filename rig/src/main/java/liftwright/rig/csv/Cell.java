package liftwright.rig.csv;

/**
 * One cell of a table.
 *
 * @param text without the blanks around it
 * @param line from 1
 * @param column from 1, in code points
 */
record Cell(String text, int line, int column) {}
