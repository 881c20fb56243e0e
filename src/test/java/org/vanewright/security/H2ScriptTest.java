package org.vanewright.security;

class H2ScriptTest extends ScriptCases {}
