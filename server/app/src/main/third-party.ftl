Rinsebell's own code is under the Apache License 2.0. Besides it there are the parts of others that stand here, each with
its licence, by the name that SPDX gives it (https://spdx.org/licenses/). Where several are named, any one of them holds.
None of them forbids any use, nor asks a salon for anything.

<#list dependencyMap as entry>
<#assign part=entry.getKey()>
<#if part.groupId != "rinsebell">
${part.groupId}:${part.artifactId} ${part.version}
    <#list entry.getValue() as licence>${licence}<#sep> or </#list>
</#if>
</#list>
B612 and B612 Mono, the letters on screens
    OFL-1.1
org.antlr:antlr4-runtime 4.13.2, inside org.jdbi:jdbi3-core
    BSD-3-Clause
