@echo off
rem Starts Holdcurve from the folder this script lies in; arguments go to the program.
set "HOLDCURVE_HOME=%~dp0.."
set "JAVA_EXE=java"
if defined JAVA_HOME set "JAVA_EXE=%JAVA_HOME%\bin\java"
rem A command is over before thorough compilation and a large heap would pay.
set "TUNING=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn24m"
if "%~1"=="" set "TUNING=-XX:+UseParallelGC"
if "%~1"=="window" set "TUNING=-XX:+UseParallelGC"
"%JAVA_EXE%" %TUNING% -Dholdcurve.home="%HOLDCURVE_HOME%" -cp "%HOLDCURVE_HOME%\lib\*" holdcurve.ui.Main %*
exit /b %ERRORLEVEL%
