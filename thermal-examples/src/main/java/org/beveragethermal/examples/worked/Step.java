/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.worked;

import java.util.Optional;

/**
 * A step of a solution.
 *
 * @param result what it finds
 * @param formula how, in symbols; empty if the library is asked
 * @param from where a result without a formula comes from; empty otherwise
 */
record Step(Value result, Optional<Term> formula, String from) {}
