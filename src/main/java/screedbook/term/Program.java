package screedbook.term;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import screedbook.desk.Canvas;
import screedbook.desk.Key;
import screedbook.desk.Look;

/**
 * A program as values and pure functions, for a {@link Loop} to run.
 *
 * @param start the first model, and what is to be done first
 * @param update model and message to the next model, and what is to be done
 * @param view the drawing of a model for so many columns and rows
 * @param look how a model wants to be coloured
 * @param over whether a model says that the program is over
 * @param key a key as a message
 * @param minute the time of day as a message, seconds cut off; told before the first drawing and whenever the minute is another one
 * @param size the columns and rows as a message; told before the first drawing and whenever they change
 * @param <M> the model
 * @param <G> the messages
 * @param <E> the effects: what is to be done outside
 */
public record Program<M, G, E>(
        Step<M, E> start,
        BiFunction<M, G, Step<M, E>> update,
        View<M> view,
        Function<M, Look> look,
        Predicate<M> over,
        Function<Key, G> key,
        Function<ZonedDateTime, G> minute,
        BiFunction<Integer, Integer, G> size) {

    /** What a message leads to. */
    public record Step<M, E>(M model, List<E> effects) {
        public Step {
            effects = List.copyOf(effects);
        }
    }

    /** Draws a model. */
    @FunctionalInterface
    public interface View<M> {
        Canvas draw(M model, int width, int height);
    }
}
