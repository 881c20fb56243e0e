package org.vanewright.security;

class H2ApiWalkTest extends ApiWalkCases {}
