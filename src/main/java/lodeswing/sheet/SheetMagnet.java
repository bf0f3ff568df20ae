package lodeswing.sheet;

import lodeswing.figure.PlateMagnet;

/**
 * A magnet to be placed by hand.
 *
 * @param magnet place, outline, pole and label
 * @param kind its shape and size in words
 * @param grade its material in words; empty where it has none
 */
public record SheetMagnet(PlateMagnet magnet, String kind, String grade) {}
