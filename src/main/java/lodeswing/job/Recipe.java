package lodeswing.job;

import java.util.List;
import java.util.function.Function;

/**
 * How a computation of one kind is made again from words, by another process or after a restart.
 *
 * @param kind the computation's kind
 * @param remake makes it from the words after the kind; throws where what they name is not stored
 *     any more
 */
public record Recipe(String kind, Function<List<String>, Computation> remake) {}
