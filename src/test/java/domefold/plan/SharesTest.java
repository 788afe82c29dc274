package domefold.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import domefold.device.Device;
import domefold.engine.ErrorDraws;
import domefold.engine.FoldTarget;
import domefold.evidence.Constants;
import domefold.outcome.Band;
import domefold.patient.Case;
import domefold.patient.Measure;
import domefold.patient.Readings;
import domefold.patient.Side;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The look-up by rank against a plain pass over all draws with the rule itself. */
class SharesTest {
    private static final long SEED = 4711;
    private static final Constants CONSTANTS = Sample.SHIPPED.constants();

    @Test
    void countingByRankIsCountingOneByOne() {
        Random dice = new Random(SEED);
        ErrorDraws errors = ErrorDraws.of(SideNumbers.VARYING.size(), 200, 3);
        FoldTarget rows = FoldTarget.of(CONSTANTS);
        for (int round = 0; round < 40; round++) {
            VerdictRule rule = new VerdictRule(CONSTANTS, WidthSchool.values()[round % 3]);
            Readings side = Sample.SIDE.with(Measure.BASE_WIDTH, 10 + 5 * dice.nextDouble())
                    .with(Measure.NIPPLE_TO_FOLD_STRETCHED, 6 + 4 * dice.nextDouble());
            side = round % 4 == 0 ? side.without(Measure.NIPPLE_TO_FOLD_STRETCHED)
                    : round % 5 == 0 ? side.without(Measure.FOLD_PINCH) : side;
            Case of = Sample.with(side);
            SideContext context = LimitsOf.of(of, Side.LEFT, Sample.SHIPPED, rule, errors);
            RankedSide ranks = new RankedSide(context.numbers(), context.drawn().orElseThrow(), rule, 0.5,
                    round % 2 == 0 ? 1 : DrawSets.WORTH_RANKING);
            for (int i = 0; i < 20; i++) {
                double ml = 150 + 450 * dice.nextDouble();
                double width = 9 + 6 * dice.nextDouble();
                Device device = Sample.gel(ml, width, ml / (Math.PI / 4 * width * width * 0.66));
                compare(context, ranks, rule, DeviceGeometry.of(device, rows), "seed " + SEED + ", round " + round);
            }
        }
    }

    private static void compare(SideContext side, RankedSide ranks, VerdictRule rule, DeviceGeometry geometry,
            String round) {
        DrawnSide drawn = side.drawn().orElseThrow();
        Band band = side.band().orElseThrow();
        double start = side.numbers().volumeMl();
        double low = band.low() - start;
        double high = band.high() - start;
        double ml = geometry.device().nominalMl();
        for (int v = 0; v < drawn.baseCm.length; v++) {
            int fits = 0;
            int notOutside = 0;
            for (int i = 0; i < drawn.draws; i++) {
                double cover = side.numbers().has(SideNumbers.FOLD_PINCH) ? 0.5 * drawn.foldPinchCm[v][i] : 0;
                int bits = rule.bits(geometry.device().widthCm(), ml, drawn.baseCm[v][i], drawn.ceilingCm[v][i],
                        drawn.limitCm[v][i], drawn.volumeMl[v][i] + low, drawn.volumeMl[v][i] + high,
                        geometry.targetCm(cover) - drawn.stretchedCm[v][i]);
                fits += bits == 0 ? 1 : 0;
                notOutside += (bits & VerdictRule.OUTSIDE) == 0 ? 1 : 0;
            }
            assertEquals(fits, ranks.fits(v, geometry, ml - low, ml - high), round + ", variant " + v);
            if (v == 0) {
                assertEquals(notOutside, ranks.notOutside(geometry, ml - low, ml - high), round);
            }
        }
    }
}
