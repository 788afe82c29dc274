package domefold.app;

import domefold.outcome.Refusal;
import domefold.screen.Effect;
import domefold.terminal.Effects;
import java.io.IOException;
import java.util.concurrent.Callable;

/** The effects of the start screen, laid out when the first is asked for: until then nobody needs a table or a device list. */
final class LateEffects implements Effects, AutoCloseable {
    private final Callable<ConsultEffects> laid;
    private ConsultEffects effects;

    LateEffects(Callable<ConsultEffects> laid) {
        this.laid = laid;
    }

    @Override
    public Effect.Outcome carryOut(Effect effect) throws IOException {
        if (effects == null) {
            try {
                effects = laid.call();
            } catch (Refusal | IOException failure) {
                return new Effect.Failed(effect, failure.getMessage());
            } catch (RuntimeException defect) {
                throw defect;
            } catch (Exception unexpected) {
                throw new IllegalStateException(unexpected);
            }
        }
        return effects.carryOut(effect);
    }

    @Override
    public void painted() {
        HeadStart.begin();
    }

    /** True while answers stand in a journal that the next start will offer. */
    boolean offeredAgain() {
        return effects != null && effects.offeredAgain();
    }

    @Override
    public void close() throws IOException {
        if (effects != null) {
            effects.close();
        }
    }
}
