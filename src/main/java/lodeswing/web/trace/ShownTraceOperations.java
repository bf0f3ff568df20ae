package lodeswing.web.trace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.PendingAnswer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on long exposures and animations say about themselves. */
@Configuration(proxyBeanMethods = false)
class ShownTraceOperations {

  private static final String TAG = "Traces";

  private final SampleLayouts samples;

  ShownTraceOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeGetTraceGlow() {
    List<ParameterText> parameters = new ArrayList<>();
    parameters.add(TraceOperations.traceId());
    parameters.addAll(settings());
    return new OperationDescription(
        "getTraceGlow",
        TAG,
        "Get a trace as a long exposure",
        "What a light on the bob leaves on paper that glows in the dark, seen from above: brighter"
            + " where the bob was slow, fainter where the light fell long ago, by Becquerel's law"
            + " of decay. Only as far as the computed path is trusted and the model holds; the text"
            + " says what is left out. On the bench the PNG states the size of its pixels, so that"
            + " it prints in true scale over the plate; the PNG holds its text, and as text it"
            + " comes alone.",
        parameters,
        Optional.empty(),
        List.of(
            new AnswerText(200, "The picture.", TraceShapes.DOCUMENT, TraceGlowController.PICTURE),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  @Bean
  OperationDescription describeGetLayoutTraceGlow() {
    List<ParameterText> parameters = new ArrayList<>(TraceOperations.whole(samples));
    parameters.addAll(settings());
    return new OperationDescription(
        "getLayoutTraceGlow",
        TAG,
        "Get one release as a long exposure by address alone",
        "As getTraceGlow, for clients that cannot post. Every figure of the layout may be changed on"
            + " the way, as in getLayoutVariant.",
        parameters,
        Optional.empty(),
        List.of(
            new AnswerText(200, "The picture.", TraceShapes.DOCUMENT, TraceGlowController.PICTURE),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  @Bean
  OperationDescription describeGetTraceAnimation() {
    List<ParameterText> parameters = new ArrayList<>();
    parameters.add(TraceOperations.traceId());
    parameters.addAll(playing());
    return new OperationDescription(
        "getTraceAnimation",
        TAG,
        "Get a trace as an animation",
        "The picture of the trace with the bob moving over it, at true speed or a stated multiple of"
            + " it, over and over; hollow where the computed path is not to be trusted. The SVG"
            + " stands still for those who prefer reduced motion; a GIF has frames of a twentieth"
            + " of a second, longer ones where they would be too many. /v1/limits states the"
            + " longest play and the most frames.",
        parameters,
        Optional.empty(),
        List.of(
            new AnswerText(
                200, "The animation.", TraceShapes.DOCUMENT, TraceAnimationController.MOVING),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  @Bean
  OperationDescription describeGetLayoutTraceAnimation() {
    List<ParameterText> parameters = new ArrayList<>(TraceOperations.whole(samples));
    parameters.addAll(playing());
    return new OperationDescription(
        "getLayoutTraceAnimation",
        TAG,
        "Get one release as an animation by address alone",
        "As getTraceAnimation, for clients that cannot post. Every figure of the layout may be"
            + " changed on the way, as in getLayoutVariant.",
        parameters,
        Optional.empty(),
        List.of(
            new AnswerText(
                200, "The animation.", TraceShapes.DOCUMENT, TraceAnimationController.MOVING),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  private static List<ParameterText> playing() {
    return List.of(
        ParameterText.optional(
            "speed",
            AnimationSettings.SPEED_RANGE,
            "How many times as fast as true the bob moves; left out, 1 where the play is then short"
                + " enough, else the least of 2, 5, 10 and so on that makes it so.",
            "1"),
        ParameterText.optional(
            "pixels", AnimationSettings.WIDTH_RANGE, "Width of a GIF in pixels.", "640"));
  }

  private static List<ParameterText> settings() {
    return List.of(
        ParameterText.optional(
            "spot",
            GlowSettings.SPOT_RANGE,
            "Width of the spot of light at half its brightness, in the layout's unit of length; 4"
                + " mm, textbook 0.05.",
            "4"),
        ParameterText.optional(
            "pixelSize",
            GlowSettings.PIXEL_RANGE,
            "Side of a pixel, in the layout's unit of length: from an eightieth to a half of the"
                + " spot; left out, a round figure that makes some 500 to 1,200 pixels where the"
                + " spot allows.",
            "0.5"),
        ParameterText.optional(
            "exposureS",
            GlowSettings.EXPOSURE_RANGE,
            "How long the light is on from the release; at most, and left out, the trace's"
                + " durationS.",
            "8"),
        ParameterText.optional(
            "lookAfterS",
            GlowSettings.LOOK_RANGE,
            "How long after the light goes out the paper is looked at.",
            "0"),
        ParameterText.optional(
            "decayTimeS",
            GlowSettings.DECAY_RANGE,
            "tau of the paper's decay 1/(1 + t/tau)^p; 30, for strontium aluminate (published: 10"
                + " to 50).",
            "30"),
        ParameterText.optional(
            "decayExponent",
            GlowSettings.EXPONENT_RANGE,
            "p of the paper's decay; 1.1, for strontium aluminate (published: close to 1).",
            "1.1"),
        ParameterText.optional(
            "gain", GlowSettings.GAIN_RANGE, "How many times as bright the glow is shown.", "1"));
  }

  @Bean
  AddressedPart tracePart(LayoutTraceController controller) {
    return new AddressedPart("/v1/layouts/{id}/trace", controller::asked);
  }
}
