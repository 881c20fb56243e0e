package org.vanewright.security;

class H2PageWalkTest extends PageWalkCases {}
