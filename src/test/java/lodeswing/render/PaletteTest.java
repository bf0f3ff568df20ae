package lodeswing.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lodeswing.figure.Pattern;
import lodeswing.figure.Tint;
import org.junit.jupiter.api.Test;

class PaletteTest {
  /**
   * Simulation of full protanopia, deuteranopia and tritanopia in linear sRGB. Source: Machado,
   * Oliveira, Fernandes, A physiologically-based model for simulation of color vision deficiency,
   * IEEE TVCG 15 (2009) 1291, severity 1.0 of the matrices published with it.
   */
  private static final double[][] SIGHTS = {
    {1, 0, 0, 0, 1, 0, 0, 0, 1},
    {0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998},
    {0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881},
    {1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900}
  };

  @Test
  void entriesCanBeToldApartWithEveryKindOfColourVision() {
    List<Rgb> colours = new ArrayList<>();
    for (int i = 0; i < Palette.colourCount(); i++) {
      colours.add(Palette.colour(i));
    }
    colours.add(Palette.colour(Tint.Role.PAPER));
    double least = Double.POSITIVE_INFINITY;
    for (double[] sight : SIGHTS) {
      for (int i = 0; i < colours.size(); i++) {
        for (int k = 0; k < i; k++) {
          least =
              Math.min(
                  least, Ciede2000.between(lab(colours.get(i), sight), lab(colours.get(k), sight)));
        }
      }
    }
    double found = least;
    assertTrue(found >= 15, () -> "least distance " + found);
  }

  @Test
  void theFirstThreeEntriesLieFurthestApart() {
    for (double[] sight : SIGHTS) {
      for (int i = 0; i < 3; i++) {
        for (int k = 0; k < i; k++) {
          double distance =
              Ciede2000.between(lab(Palette.colour(i), sight), lab(Palette.colour(k), sight));
          assertTrue(distance >= 30, () -> "distance " + distance);
        }
      }
    }
  }

  @Test
  void shadesOfDifferentEntriesCanBeToldApartWithEveryKindOfColourVision() {
    // The least CIEDE2000 difference between any shade of one and any of another; 2.3 is a just
    // noticeable difference (Mahy, Van Eycken, Oosterlinck, Color Res. Appl. 19 (1994) 105).
    assertShadesApart(3, 30);
    assertShadesApart(6, 12);
    assertShadesApart(8, 9);
    assertShadesApart(12, 4);
  }

  private static final double[][] DEPTHS = {
    {0, 0}, {0, 0.5}, {0, 1}, {0.5, 0}, {0.5, 0.5}, {0.5, 1}, {1, 0}, {1, 0.5}, {1, 1}
  };

  private static void assertShadesApart(int entries, double least) {
    for (double[] sight : SIGHTS) {
      for (int i = 0; i < entries; i++) {
        for (int k = 0; k < i; k++) {
          for (double[] depths : DEPTHS) {
            Rgb one = Palette.shade(i, depths[0]);
            Rgb other = Palette.shade(k, depths[1]);
            double distance = Ciede2000.between(lab(one, sight), lab(other, sight));
            assertTrue(distance >= least, () -> one.hex() + " " + other.hex() + ": " + distance);
          }
        }
      }
    }
  }

  @Test
  void shadesFallEvenlyInLightnessAndKeepTheirHue() {
    double[] normal = SIGHTS[0];
    for (int i = 0; i < Palette.colourCount(); i++) {
      double[] light = lab(Palette.shade(i, 0), normal);
      double[] dark = lab(Palette.shade(i, 1), normal);
      double[] middle = lab(Palette.shade(i, 0.5), normal);
      assertEquals(2 * Palette.SHADING, light[0] - dark[0], 1.2);
      assertEquals((light[0] + dark[0]) / 2, middle[0], 0.8);
      double chroma = Math.hypot(middle[1], middle[2]);
      if (chroma > 10) {
        double turn = Math.atan2(light[2], light[1]) - Math.atan2(dark[2], dark[1]);
        assertEquals(0, Math.IEEEremainder(turn, 2 * Math.PI), 0.06);
      }
    }
  }

  @Test
  void patternsOnEveryShadeKeepTheContrastOfGraphics() {
    // W3C, WCAG 2.2, 1.4.11: graphics 3 to 1.
    for (int i = 0; i < Palette.colourCount(); i++) {
      for (double depth : new double[] {0, 0.5, 1}) {
        Rgb ground = Palette.shade(i, depth);
        Rgb ink = Palette.colour(new Tint.Shade(i, depth, true));
        assertTrue(ink.contrast(ground) >= 3, ground.hex() + " " + ink.hex());
      }
    }
  }

  @Test
  void textsAndMarksKeepTheContrastThatTheGuidelinesAskFor() {
    // W3C, WCAG 2.2: 1.4.3 text 4.5 to 1, 1.4.11 graphics 3 to 1.
    for (Tint.Role ground :
        List.of(
            Tint.Role.PAPER,
            Tint.Role.PLATE,
            Tint.Role.NORTH_FACE,
            Tint.Role.SOUTH_FACE,
            Tint.Role.ATTRACTING_FACE,
            Tint.Role.REPELLING_FACE)) {
      assertContrast(4.5, Tint.Role.INK, ground);
      assertContrast(3, Tint.Role.SEALED, ground);
      assertContrast(3, Tint.Role.EVENT, ground);
    }
    assertContrast(4.5, Tint.Role.SOFT_INK, Tint.Role.PAPER);
    assertContrast(3, Tint.Role.PLATE_EDGE, Tint.Role.PLATE);
    for (Tint.Role badge :
        List.of(Tint.Role.NORTH, Tint.Role.SOUTH, Tint.Role.ATTRACTING, Tint.Role.REPELLING)) {
      assertContrast(4.5, Tint.Role.PAPER, badge);
    }
  }

  @Test
  void pathsGainStrengthSteadilyAndUntrustedPartsStayPaler() {
    for (int trail = 0; trail < 2; trail++) {
      double before = 0;
      for (int i = 0; i <= 20; i++) {
        Rgb trusted = Palette.colour(new Tint.Age(trail, i / 20.0, true));
        Rgb untrusted = Palette.colour(new Tint.Age(trail, i / 20.0, false));
        double contrast = trusted.contrast(Palette.colour(Tint.Role.PLATE));
        double paler = untrusted.contrast(Palette.colour(Tint.Role.PLATE));
        assertTrue(contrast > before);
        assertTrue(paler < contrast);
        before = contrast;
      }
      assertContrast(1.7, new Tint.Age(trail, 0, true), Tint.Role.PLATE);
      assertContrast(7, new Tint.Age(trail, 1, true), Tint.Role.PLATE);
      assertContrast(3, new Tint.Age(trail, 1, false), Tint.Role.PLATE);
    }
  }

  /** Also in grey, which is their lightness alone. */
  @Test
  void levelsGetDarkerStepByStepWithEveryKindOfColourVision() {
    int steps = 12;
    for (int ramp = 0; ramp < 2; ramp++) {
      for (double[] sight : SIGHTS) {
        double before = 101;
        for (int i = 0; i < steps; i++) {
          Tint tint = new Tint.Level(ramp, (double) i / (steps - 1));
          double lightness = lab(Palette.colour(tint), sight)[0];
          assertTrue(lightness < before - 2, tint + ": " + lightness + " after " + before);
          before = lightness;
        }
      }
    }
  }

  @Test
  void eightHundredEntriesDifferInColourPatternOrMark() {
    Set<List<Object>> seen = new HashSet<>();
    for (int i = 0; i < 800; i++) {
      assertTrue(seen.add(List.of(Palette.colour(i), Palette.pattern(i), Palette.mark(i))));
    }
    Set<Object> marks = new HashSet<>();
    for (int i = 0; i < Palette.colourCount(); i++) {
      assertTrue(marks.add(Palette.mark(i)));
      assertEquals(Pattern.PLAIN, Palette.pattern(i));
    }
    assertNotEquals(Palette.pattern(0), Palette.pattern(Palette.colourCount()));
  }

  @Test
  void contrastOfBlackOnWhiteIsTwentyOne() {
    // W3C, WCAG 2.2, definition of contrast ratio: ranges from 1 to 21.
    assertEquals(21, Rgb.of(0).contrast(Rgb.of(0xFFFFFF)), 1e-9);
    assertEquals(1, Rgb.of(0x808080).contrast(Rgb.of(0x808080)), 1e-12);
  }

  @Test
  void colourDistanceAgreesWithThePublishedPairs() {
    // Sharma, Wu, Dalal, The CIEDE2000 color-difference formula, Color Res. Appl. 30 (2005), table
    // 1.
    double[][] pairs = {
      {50, 2.6772, -79.7751, 50, 0, -82.7485, 2.0425},
      {50, -1.3802, -84.2814, 50, 0, -82.7485, 1.0000},
      {50, 0, 0, 50, -1, 2, 2.3669},
      {50, 2.49, -0.001, 50, -2.49, 0.0009, 7.1792},
      {50, 2.49, -0.001, 50, -2.49, 0.0011, 7.2195},
      {50, 2.5, 0, 73, 25, -18, 27.1492},
      {60.2574, -34.0099, 36.2677, 60.4626, -34.1751, 39.4387, 1.2644}
    };
    for (double[] p : pairs) {
      double[] a = {p[0], p[1], p[2]};
      double[] b = {p[3], p[4], p[5]};
      assertEquals(p[6], Ciede2000.between(a, b), 5e-5);
      assertEquals(p[6], Ciede2000.between(b, a), 5e-5);
    }
  }

  private static void assertContrast(double least, Tint tint, Tint ground) {
    double contrast = Palette.colour(tint).contrast(Palette.colour(ground));
    assertTrue(contrast >= least, () -> tint + " on " + ground + ": " + contrast);
  }

  private static double[] lab(Rgb colour, double[] sight) {
    double[] linear = {
      linear(colour.red()), linear(colour.green()), linear(colour.blue()),
    };
    double[] seen = new double[3];
    for (int i = 0; i < 3; i++) {
      double sum = 0;
      for (int k = 0; k < 3; k++) {
        sum += sight[3 * i + k] * linear[k];
      }
      seen[i] = Math.min(1, Math.max(0, sum));
    }
    return Ciede2000.lab(seen[0], seen[1], seen[2]);
  }

  private static double linear(int part) {
    double value = part / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
