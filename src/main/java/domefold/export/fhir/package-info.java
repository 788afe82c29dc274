/**
 * The record as a FHIR R4 (4.0.1) document bundle for a hospital's own system.
 *
 * <p>Start at {@link domefold.export.fhir.FhirBundle}. Only codes that were read in a published definition are used; where
 * none exists, a local code of ours and the words stand, under a system whose address says that it leads nowhere. What a
 * validator does not see (a left code under a right heading, a text that names another unit) is checked by
 * {@link domefold.export.fhir.FhirCheck} on every bundle before it leaves.
 */
package domefold.export.fhir;
