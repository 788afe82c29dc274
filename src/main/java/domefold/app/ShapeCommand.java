package domefold.app;

import domefold.report.ShapeText;
import domefold.shell.ShapeAnswer;
import domefold.store.AnswerJson;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(name = "shape", description = {"A liquid-filled shell lying on a table: the solver alone, for anyone who wants to"
        + " check it.", ""},
        footer = {"", "Example: domefold shape --half-width 6.55 --dome 2.45 --exponent 1.5 --fill 0.9"})
final class ShapeCommand implements Runner {
    private final Domefold root;

    @Option(names = "--half-width", paramLabel = "CM", required = true, converter = DecimalConverter.class,
            description = "Half the width of the unfilled shell.")
    private double halfWidthCm;

    @Option(names = "--dome", paramLabel = "CM", required = true, converter = DecimalConverter.class,
            description = "Height of its dome.")
    private double domeCm;

    @Option(names = "--exponent", paramLabel = "N", required = true, converter = DecimalConverter.class,
            description = "Exponent of the dome's superellipse; 2 is an ellipse.")
    private double exponent;

    @ArgGroup(multiplicity = "1")
    private Amount amount;

    @Option(names = "--stiffness", paramLabel = "CM2", converter = DecimalConverter.class,
            description = "Stiffness of the shell over the filler's weight density; without it the shell does not stretch.")
    private Double stiffnessCm2;

    static final class Amount {
        @Option(names = "--fill", paramLabel = "RATIO", required = true, converter = DecimalConverter.class,
                description = "Volume over the volume at which the shell is just full.")
        private Double fillRatio;

        @Option(names = "--volume", paramLabel = "ML", required = true, converter = DecimalConverter.class,
                description = "Volume in mL.")
        private Double volumeMl;
    }

    @Mixin
    private As as;

    ShapeCommand(Domefold root) {
        this.root = root;
    }

    @Override
    public int run() throws Exception {
        OptionalDouble stiffness = stiffnessCm2 == null ? OptionalDouble.empty() : OptionalDouble.of(stiffnessCm2);
        ShapeAnswer answer = amount.fillRatio != null
                ? ShapeAnswer.atFill(halfWidthCm, domeCm, exponent, amount.fillRatio, stiffness)
                : ShapeAnswer.atVolume(halfWidthCm, domeCm, exponent, amount.volumeMl, stiffness);
        if (as.json()) {
            root.console().json(AnswerJson.text(json(answer)));
        } else {
            root.console().text(ShapeText.of(answer));
        }
        return Exit.DONE;
    }

    private static Map<String, Object> json(ShapeAnswer answer) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("format", answer.format());
        json.put("fullVolumeMl", answer.fullVolumeMl());
        json.put("capacityMl", answer.capacityMl());
        json.put("fillRatio", answer.fillRatio());
        json.put("volumeMl", answer.volumeMl());
        json.put("state", answer.state());
        json.put("apexHeadCm", answer.apexHeadCm());
        json.put("baseHeadCm", answer.baseHeadCm());
        json.put("widthCm", answer.widthCm());
        json.put("heightCm", answer.heightCm());
        json.put("contactWidthCm", answer.contactWidthCm());
        json.put("slackFraction", answer.slackFraction());
        json.put("bandFraction", answer.bandFraction());
        json.put("crimp", answer.crimp());
        return json;
    }
}
