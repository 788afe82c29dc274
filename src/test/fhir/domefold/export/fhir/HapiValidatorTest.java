package domefold.export.fhir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import ca.uhn.fhir.context.FhirContext;
import ca.uhn.fhir.context.support.DefaultProfileValidationSupport;
import ca.uhn.fhir.validation.FhirValidator;
import ca.uhn.fhir.validation.ResultSeverityEnum;
import ca.uhn.fhir.validation.SingleValidationMessage;
import domefold.record.Amendment;
import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import domefold.sheet.SampleRecords;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hl7.fhir.common.hapi.validation.support.CommonCodeSystemsTerminologyService;
import org.hl7.fhir.common.hapi.validation.support.InMemoryTerminologyServerValidationSupport;
import org.hl7.fhir.common.hapi.validation.support.ValidationSupportChain;
import org.hl7.fhir.common.hapi.validation.validator.FhirInstanceValidator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every kind of bundle before an independent validator (HAPI, offline). Runs with the profile "fhir". */
class HapiValidatorTest {
    private static final ConsultRecord SIGNED = SampleRecords.signed();
    private static FhirValidator validator;

    @BeforeAll
    static void startTheValidator() {
        FhirContext context = FhirContext.forR4();
        ValidationSupportChain chain = new ValidationSupportChain(new DefaultProfileValidationSupport(context),
                new InMemoryTerminologyServerValidationSupport(context), new CommonCodeSystemsTerminologyService(context));
        FhirInstanceValidator module = new FhirInstanceValidator(chain);
        module.setAnyExtensionsAllowed(false);
        validator = context.newValidator().registerValidatorModule(module);
    }

    @Test
    void everyKindOfBundleIsValid() {
        Amendment change = new Amendment(1, SampleRecords.SHA, "why", "Dr B", Instant.parse("2026-03-05T08:00:00Z"), List.of());
        ConsultRecord unsettled = new ConsultRecord("K-9", 1, RecordStatus.DRAFT, false, SIGNED.inputs(), List.of(), "{}",
                Optional.empty(), Optional.empty(), List.of(), List.of(), Optional.empty(), List.of(), List.of(),
                SIGNED.versions(), SampleRecords.withStatus(RecordStatus.DRAFT, false).authorship(), Optional.empty());
        for (ConsultRecord record : List.of(SIGNED, SampleRecords.withStatus(RecordStatus.DRAFT, false), unsettled,
                SIGNED.following(RecordStatus.AMENDED, change), SIGNED.following(RecordStatus.ENTERED_IN_ERROR, change))) {
            String bundle = FhirBundle.of(record, SampleRecords.SHA);
            assertEquals(List.of(), errors(bundle), record.status().words());
            assertEquals(List.of(), warnings(bundle), record.status().words());
        }
    }

    @Test
    void theValidatorDoesBite() {
        String sound = FhirBundle.of(SIGNED, SampleRecords.SHA);
        for (String[] fault : new String[][] {{"\"status\" : \"final\",", ""}, {"\"code\" : \"cm\"", "\"code\" : \"cmm\""},
            {"2026-03-04\"", "2026-02-30\""}, {"\"type\" : \"document\"", "\"type\" : \"documents\""}}) {
            String faulty = sound.replace(fault[0], fault[1]);
            assertFalse(faulty.equals(sound), fault[0]);
            assertTrue(errors(faulty).size() > 0, fault[0] + " → " + fault[1]);
        }
    }

    /** Warnings beside the expected two: a code system that is not on this machine, and no narrative in small resources. */
    private static List<String> warnings(String bundle) {
        return validator.validateWithResult(bundle).getMessages().stream()
                .filter(message -> message.getSeverity() == ResultSeverityEnum.WARNING)
                .map(SingleValidationMessage::getMessage)
                .filter(text -> !text.contains("CodeSystem could not be found") && !text.contains("CodeSystem is unknown")
                        && !text.contains("dom-6")).distinct().toList();
    }

    private static List<String> errors(String bundle) {
        return validator.validateWithResult(bundle).getMessages().stream()
                .filter(message -> message.getSeverity().ordinal() >= ResultSeverityEnum.ERROR.ordinal())
                .map(message -> message.getLocationString() + ": " + message.getMessage()).toList();
    }
}
