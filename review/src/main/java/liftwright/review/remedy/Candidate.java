package liftwright.review.remedy;

import java.util.List;
import java.util.function.IntFunction;
import liftwright.answer.Sentence;
import liftwright.rig.Change;

/**
 * One way to change a rig, in steps.
 *
 * @param most steps it can go
 * @param name what so many steps do, in words
 * @param step one step, in words
 * @param changes the edits of so many steps, from 1
 */
public record Candidate(
        int most, IntFunction<Sentence> name, Sentence step, IntFunction<List<Change>> changes) {}
