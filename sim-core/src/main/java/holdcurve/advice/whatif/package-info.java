/**
 * What a hold, the build-up and the rail pressure would be if something were changed: asked of many
 * ways that the circuit may really be, so that the answer carries its own doubt.
 *
 * <p>Start at {@link holdcurve.advice.whatif.WhatIf}.
 */
package holdcurve.advice.whatif;
