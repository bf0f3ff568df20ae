package lodeswing.render.pdf;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** Holds a file against PDF/A-2a (ISO 19005-2) and PDF/UA-1 (ISO 14289-1) by veraPDF. */
public final class PdfValidation {

  private PdfValidation() {}

  /** Fails where a rule of either standard is broken. */
  public static void check(byte[] pdf) throws Exception {
    VeraGreenfieldFoundryProvider.initialise();
    for (PDFAFlavour flavour : new PDFAFlavour[] {PDFAFlavour.PDFA_2_A, PDFAFlavour.PDFUA_1}) {
      try (var parser =
              Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), flavour);
          var validator = Foundries.defaultInstance().createValidator(flavour, false)) {
        var result = validator.validate(parser);
        var broken = new StringBuilder();
        for (TestAssertion assertion : result.getTestAssertions()) {
          if (assertion.getStatus() != TestAssertion.Status.PASSED) {
            broken.append(assertion.getRuleId()).append(' ').append(assertion.getMessage());
            broken.append(" at ").append(assertion.getLocation().getContext()).append('\n');
          }
        }
        assertTrue(result.getTotalAssertions() > 100, flavour + " looked at hardly anything");
        assertTrue(result.isCompliant(), flavour + ":\n" + broken);
      }
    }
  }
}
