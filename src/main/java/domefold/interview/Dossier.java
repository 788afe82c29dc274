package domefold.interview;

import domefold.patient.Case;

/** Everything answered so far: the case and the choices. */
public record Dossier(Case patientCase, Choices choices) {
    public Dossier withCase(Case changed) {
        return new Dossier(changed, choices);
    }

    public Dossier withChoices(Choices changed) {
        return new Dossier(patientCase, changed);
    }
}
