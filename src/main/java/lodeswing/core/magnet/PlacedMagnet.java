package lodeswing.core.magnet;

import lodeswing.core.geometry.Vec3;

/**
 * A magnet that stands on the plate with its axis upright.
 *
 * @param magnet its shape and strength
 * @param centre its centre in the layout's frame [m]
 * @param turn angle of its own x axis from the frame's x axis, anticlockwise from above [rad];
 *     matters for blocks only
 * @param poleUp the pole that faces up
 */
public record PlacedMagnet(Magnet magnet, Vec3 centre, double turn, Pole poleUp) {}
