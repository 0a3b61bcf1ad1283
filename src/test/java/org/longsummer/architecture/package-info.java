/** The house's rules as tests: who may know whom, what the core keeps clear of, how classes may be called. */
package org.longsummer.architecture;
