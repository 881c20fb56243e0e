package org.vanewright.security;

class H2InjectionTest extends InjectionCases {}
