@echo off
rem Starts Screedbook from the screedbook.jar that lies beside this file, in a window of its own: a Windows console is no
rem terminal that it could draw on. Commands such as "screedbook verify JOB" print in the console. Not tried on Windows yet.
setlocal
set "JAR=%~dp0screedbook.jar"
if not exist "%JAR%" (
    echo screedbook: no %JAR% 1>&2
    exit /b 2
)
set "JAVA=java"
if exist "%~dp0runtime\bin\java.exe" set "JAVA=%~dp0runtime\bin\java"
if not exist "%~dp0runtime\bin\java.exe" if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -XX:+UseSerialGC -Dsun.java2d.uiScale=1 -cp "%JAR%" screedbook.Main %*
exit /b %ERRORLEVEL%
