/** The workloads that are measured do what they say; how fast is not tested here. */
@NullMarked
package org.wetside.benchmark;

import org.jspecify.annotations.NullMarked;
