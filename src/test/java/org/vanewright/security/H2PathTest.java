package org.vanewright.security;

class H2PathTest extends PathCases {}
