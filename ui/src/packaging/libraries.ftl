<#-- One library a line: name, version, licences, address; the class Libraries reads it. -->
<#list dependencyMap as entry>
<#assign library = entry.getKey()/>
<#if library.groupId != "holdcurve">
${library.artifactId}|${library.version}|${entry.getValue()?join(", ")}|${library.url!""}
</#if>
</#list>
