package org.vanewright.security;

class H2MassAssignmentTest extends MassAssignmentCases {}
