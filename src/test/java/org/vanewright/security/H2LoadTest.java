package org.vanewright.security;

class H2LoadTest extends LoadCases {}
