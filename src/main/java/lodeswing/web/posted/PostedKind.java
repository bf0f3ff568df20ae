package lodeswing.web.posted;

import lodeswing.web.body.RecordShape;

/**
 * What tells one resource's requests from another's.
 *
 * @param prefix of its ids
 * @param word names it in keys, in the store and among recipes
 * @param path its ids stand behind this
 * @param shape of what is stored under an id
 * @param missing told to whoever asks for an id that is not stored
 */
public record PostedKind(
    String prefix, String word, String path, RecordShape shape, String missing) {}
