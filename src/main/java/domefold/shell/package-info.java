/**
 * The device as a body: dome geometry, a liquid-filled shell on a table, its silhouette, ripple rank, opening and the
 * breast after.
 *
 * <p>Start at {@link domefold.shell.DeviceShell} for a row of a device list, at {@link domefold.shell.ShellSolver} for
 * the mechanics alone. Lengths in cm, volumes in mL, pressures as head in cm of the filler. Every formula takes what it
 * needs as arguments; nothing here is measured on a patient, and each result says how far it can be trusted.
 */
package domefold.shell;
