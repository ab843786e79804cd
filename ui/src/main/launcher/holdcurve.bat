@echo off
rem Starts Holdcurve from the folder this script lies in; arguments go to the program.
set "HOLDCURVE_HOME=%~dp0.."
set "JAVA_EXE=java"
if defined JAVA_HOME set "JAVA_EXE=%JAVA_HOME%\bin\java"
"%JAVA_EXE%" -Dholdcurve.home="%HOLDCURVE_HOME%" -cp "%HOLDCURVE_HOME%\lib\*" holdcurve.ui.Main %*
exit /b %ERRORLEVEL%
